"""Plastics melt on a dead center."""

import pytest

from tests.rules.bench import fired

RULE = "dead-center-melts-plastic"
FIRES = [
    "PLASTIC; hold.method=driving-dog; hold.tail.kind=dead-point",
    "PLASTIC; hold.method=driving-dog; hold.tail.kind=dead-cup",
]
QUIET = [
    "PLASTIC; hold.method=driving-dog; hold.tail.kind=live-point",
    "SPINDLE; hold.tail.kind=dead-point",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
