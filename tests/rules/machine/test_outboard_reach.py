"""Outboard work swings where nobody expects it."""

import pytest

from tests.rules.bench import fired

RULE = "outboard-reach"
FIRES = [
    "BOWL; hold.outboard=yes",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; hold.outboard=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
