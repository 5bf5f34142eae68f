"""Wood nobody can name can be asked a few questions."""

import pytest

from tests.rules.bench import fired

RULE = "questions-for-unknown-wood"
FIRES = [
    "SPINDLE; work.material=unknown",
    "BOWL; work.material=unknown",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=cocobolo",
    "PLASTIC",
    "BOWL; work.material=flubberwood",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
