"""What holds a flat disc of plastic or laminate."""

import pytest

from tests.rules.bench import fired

RULE = "flat-that-takes-glue"
FIRES = [
    "DISC; work.material=acrylic",
    "DISC; work.material=aluminum",
    "DISC; work.material=mdf",
    "DISC; work.material=canvas phenolic",
    "DISC; work.material=coconut shell",
    "DISC; work.material=mystery",
    "DISC; work.material=acrylic; work.length=24mm",
    "DISC; work.material=soap",
]
QUIET = [
    "SPINDLE",
    "DISC",
    "DISC; work.material=acrylic; work.length=30mm",
    "DISC; work.material=acetal",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
