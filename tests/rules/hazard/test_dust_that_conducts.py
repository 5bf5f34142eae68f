"""Carbon and graphite dust shorts the motor."""

import pytest

from tests.rules.bench import fired

RULE = "dust-that-conducts"
FIRES = [
    "PLASTIC; work.material=carbon fiber",
    "PLASTIC; work.material=pencils in resin; work.tested=yes",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "PLASTIC; work.material=glass epoxy",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
