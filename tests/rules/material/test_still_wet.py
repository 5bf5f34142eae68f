"""Nuts, cones and fiber are dried first."""

import pytest

from tests.rules.bench import fired

RULE = "still-wet"
FIRES = [
    "SPINDLE; work.material=tagua nut; work.moisture=wet",
]
QUIET = [
    "SPINDLE; work.material=tagua nut; work.moisture=dry",
    "SPINDLE; work.moisture=wet",
    "PLASTIC",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
