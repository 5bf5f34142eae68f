"""Nuts, cones and fiber are dried first."""

import pytest

from tests.rules.bench import fired

RULE = "still-wet"
FIRES = [
    "SPINDLE; work.material=tagua nut; work.moisture=wet",
    "SPINDLE; work.material=tagua nut; work.moisture=frozen",
    "SPINDLE; work.material=tagua nut; work.moisture=green",
]
QUIET = [
    "SPINDLE; work.material=tagua nut; work.moisture=dry",
    "SPINDLE; work.moisture=wet",
    "PLASTIC",
    "SPINDLE; work.moisture=wet; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
