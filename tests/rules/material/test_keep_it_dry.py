"""Some stuff must be dry, and nobody said."""

import pytest

from tests.rules.bench import fired

RULE = "keep-it-dry"
FIRES = [
    "SPINDLE; work.material=tagua nut; work.moisture=",
    "PLASTIC; work.material=casein",
]
QUIET = [
    "SPINDLE; work.material=tagua nut",
    "PLASTIC",
    "SPINDLE; work.moisture=",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
