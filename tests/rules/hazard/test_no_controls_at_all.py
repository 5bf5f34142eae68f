"""Sensitizing wood without extraction or mask."""

import pytest

from tests.rules.bench import fired

RULE = "no-controls-at-all"
FIRES = [
    "SPINDLE; work.material=iroko; person.respirator=none",
    "SPINDLE; work.material=American beech; person.extraction=no",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; person.extraction=no",
    "SPINDLE; work.material=iroko",
    "SPINDLE; work.material=black walnut; person.extraction=no",
    "SPINDLE; work.material=iroko; person.respirator=none; person.reacted_before=[iroko]",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]; person.extraction=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
