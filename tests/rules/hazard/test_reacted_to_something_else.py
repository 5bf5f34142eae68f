"""A body that reacted once may do so again."""

import pytest

from tests.rules.bench import fired

RULE = "reacted-to-something-else"
FIRES = [
    "SPINDLE; person.reacted_before=[rosewood]",
    "PLASTIC; person.reacted_before=[cocobolo]",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]",
    "SPINDLE; person.reacted_before=[maple]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
