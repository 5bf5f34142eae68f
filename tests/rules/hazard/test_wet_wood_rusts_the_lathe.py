"""Wet wood rusts bright iron in hours."""

import pytest

from tests.rules.bench import fired

RULE = "wet-wood-rusts-the-lathe"
FIRES = [
    "BOWL; work.moisture=green",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "PLASTIC",
    "SPINDLE; work.moisture=green; work.material=tagua nut",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
