"""A mild wood for somebody its kin has hurt."""

import pytest

from tests.rules.bench import fired

RULE = "kin-of-a-mild-wood"
FIRES = [
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]",
]
QUIET = [
    "SPINDLE; work.material=incense cedar",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]; person.extraction=no",
    "SPINDLE",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]; person.respirator=",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
