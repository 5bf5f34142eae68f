"""Kin of the wood that did it share its allergens."""

import pytest

from tests.rules.bench import fired

RULE = "kin-of-a-sensitizer"
FIRES = [
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]",
]
QUIET = [
    "SPINDLE; work.material=cocobolo",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[iroko]",
    "SPINDLE",
    "SPINDLE; work.material=incense cedar; person.reacted_before=[western red cedar]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
