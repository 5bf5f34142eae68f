"""The pea family is wide."""

import pytest

from tests.rules.bench import fired

RULE = "same-wide-family"
FIRES = [
    "SPINDLE; work.material=bubinga; person.reacted_before=[rosewood]",
]
QUIET = [
    "SPINDLE; work.material=bubinga",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]",
    "SPINDLE; person.reacted_before=[rosewood]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
