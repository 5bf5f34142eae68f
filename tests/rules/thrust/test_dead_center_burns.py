"""A dry dead center burns the end."""

import pytest

from tests.rules.bench import fired

RULE = "dead-center-burns"
FIRES = [
    "SPINDLE; hold.tail.kind=dead-point",
    "SPINDLE; hold.tail.kind=dead-cup",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; hold.tail.kind=live-cup",
    "SPINDLE; hold.tail.kind=dead-point; work.material=unknown plastic",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
