"""Who has reacted before reacts to less."""

import pytest

from tests.rules.bench import fired

RULE = "reacted-before"
FIRES = [
    "SPINDLE; work.material=black walnut; person.reacted_before=[black walnut]",
    "SPINDLE; work.material=iroko; person.reacted_before=[iroko]",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=black walnut",
    "SPINDLE; work.material=black walnut; person.reacted_before=[iroko]",
    "SPINDLE; work.material=yew; person.reacted_before=[yew]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
