"""Tap what breaks like pottery."""

import pytest

from tests.rules.bench import fired

RULE = "look-for-cracks"
FIRES = [
    "STONE",
    "SPINDLE; work.material=tagua nut",
]
QUIET = [
    "SPINDLE",
    "PLASTIC",
    "STONE; work.condition=[sound]",
    "STONE; work.condition=[crack]; work.crack.across=5mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
