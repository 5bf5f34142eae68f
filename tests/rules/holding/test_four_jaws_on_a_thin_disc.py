"""Jaws do not hold a thin disc."""

import pytest

from tests.rules.bench import fired

RULE = "four-jaws-on-a-thin-disc"
FIRES = [
    "DISC; hold.method=four-jaw-independent",
    "DISC; hold.method=four-jaw-independent; work.length=24mm",
]
QUIET = [
    "SPINDLE; hold.method=four-jaw-independent",
    "DISC; hold.method=four-jaw-independent; work.length=30mm",
    "DISC; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
