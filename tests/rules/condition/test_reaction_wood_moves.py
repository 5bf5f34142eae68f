"""Reaction wood moves as it is cut."""

import pytest

from tests.rules.bench import fired

RULE = "reaction-wood-moves"
FIRES = [
    "SPINDLE; work.condition=[reaction-wood]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.condition=[knot]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
