"""Poisonous woods and the strongest sensitizers are asked about first."""

import pytest

from tests.rules.bench import fired

RULE = "ask-before-this-wood"
FIRES = [
    "SPINDLE; work.material=yew",
    "SPINDLE; work.material=laburnum",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.material=oleander",
    "SPINDLE; work.material=yew; person.reacted_before=[yew]",
    "SPINDLE; work.material=rengas; person.reacted_before=[poisonwood]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
