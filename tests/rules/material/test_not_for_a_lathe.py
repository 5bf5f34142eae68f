"""Some materials are never turned here."""

import pytest

from tests.rules.bench import fired

RULE = "not-for-a-lathe"
FIRES = [
    "PLASTIC; work.material=magnesium alloy swarf",
    "STONE; work.material=granite",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
