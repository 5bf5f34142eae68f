"""Rotten wood has no strength to hold on to."""

import pytest

from tests.rules.bench import fired

RULE = "rotten"
FIRES = [
    "BOWL; work.condition=[rot]",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[spalted]",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
