"""Mildly irritating wood without extraction or mask."""

import pytest

from tests.rules.bench import fired

RULE = "mild-wood-no-controls"
FIRES = [
    "SPINDLE; person.extraction=no",
    "SPINDLE; person.respirator=none",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; person.extraction=",
    "SPINDLE; work.material=iroko; person.extraction=no",
    "SPINDLE; person.extraction=no; person.reacted_before=[maple]",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]; person.extraction=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
