"""Three jaws grip only what is round or hexagonal."""

import pytest

from tests.rules.bench import fired

RULE = "three-jaws-on-a-square"
FIRES = [
    "SPINDLE; hold.method=three-jaw",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "SPINDLE; hold.method=four-jaw-independent",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
