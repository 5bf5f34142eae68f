"""A mild wood, its kin has hurt you, and no dust control."""

import pytest

from tests.rules.bench import fired

RULE = "kin-of-a-mild-wood-unprotected"
FIRES = [
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]; person.extraction=no",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]; person.respirator=",
]
QUIET = [
    "SPINDLE; work.material=incense cedar; person.extraction=no",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]; person.extraction=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
