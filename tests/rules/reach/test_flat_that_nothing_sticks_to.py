"""What holds a flat disc that nothing sticks to."""

import pytest

from tests.rules.bench import fired

RULE = "flat-that-nothing-sticks-to"
FIRES = [
    "DISC; work.material=acetal",
    "DISC; work.material=acetal; work.length=24mm",
    "DISC; work.material=wax",
    "DISC; work.material=glass silicone",
]
QUIET = [
    "SPINDLE",
    "DISC",
    "DISC; work.material=acetal; work.length=30mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
