"""Grain that runs out of a spindle breaks it."""

import pytest

from tests.rules.bench import fired

RULE = "grain-runs-out"
FIRES = [
    "SPINDLE; work.grain_slope=1:8",
    "SPINDLE; work.grain_slope=1:10",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.grain_slope=1:20",
    "BOWL",
    "SPINDLE; work.grain_slope=1:8; work.grain=across",
    "SPINDLE; work.grain_slope=1:12",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
