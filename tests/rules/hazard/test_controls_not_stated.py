"""Irritating wood with dust control not stated."""

import pytest

from tests.rules.bench import fired

RULE = "controls-not-stated"
FIRES = [
    "SPINDLE; person.extraction=",
    "SPINDLE; work.material=iroko; person.respirator=",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; person.extraction=no",
    "SPINDLE; work.material=iroko",
    "SPINDLE; person.extraction=; person.reacted_before=[maple]",
    "SPINDLE; person.extraction=; work.material=yew",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]; person.respirator=",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
