"""Nuts, cones and fiber over a fifth water are wet."""

import pytest

from tests.rules.bench import fired

RULE = "too-damp"
FIRES = [
    "SPINDLE; work.material=tagua nut; work.moisture=40%",
    "SPINDLE; work.material=tagua nut; work.moisture=25%",
]
QUIET = [
    "SPINDLE; work.material=tagua nut",
    "SPINDLE; work.moisture=40%",
    "SPINDLE; work.moisture=40%; work.material=aluminum",
    "SPINDLE; work.material=tagua nut; work.moisture=20%",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
