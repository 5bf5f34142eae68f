"""A strong poison or sensitizer, and a body that knows it."""

import pytest

from tests.rules.bench import fired

RULE = "reacted-to-a-strong-one"
FIRES = [
    "SPINDLE; work.material=yew; person.reacted_before=[yew]",
    "SPINDLE; work.material=rengas; person.reacted_before=[poisonwood]",
]
QUIET = [
    "SPINDLE; work.material=yew",
    "SPINDLE; work.material=yew; person.reacted_before=[black walnut]",
    "SPINDLE",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
