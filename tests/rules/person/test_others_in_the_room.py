"""Other people breathe the same dust."""

import pytest

from tests.rules.bench import fired

RULE = "others-in-the-room"
FIRES = [
    "SPINDLE; person.others_in_room=yes",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; person.others_in_room=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
