"""Spalted wood is hard and soft side by side."""

import pytest

from tests.rules.bench import fired

RULE = "spalted"
FIRES = [
    "BOWL; work.condition=[spalted]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[burl]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
