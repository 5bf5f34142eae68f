"""Grit on slideways is lapping paste."""

import pytest

from tests.rules.bench import fired

RULE = "cover-the-ways"
FIRES = [
    "STONE",
    "PLASTIC; work.material=cast iron",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
