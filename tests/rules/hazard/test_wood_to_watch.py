"""A sensitizing wood with dust control in place."""

import pytest

from tests.rules.bench import fired

RULE = "wood-to-watch"
FIRES = [
    "SPINDLE; work.material=iroko",
    "SPINDLE; work.material=American beech",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=iroko; person.extraction=no",
    "SPINDLE; work.material=iroko; person.extraction=",
    "SPINDLE; work.material=iroko; person.reacted_before=[iroko]",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
