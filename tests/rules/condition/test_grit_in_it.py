"""Grit in bark and checks laps tools and slideways."""

import pytest

from tests.rules.bench import fired

RULE = "grit-in-it"
FIRES = [
    "BOWL; work.condition=[grit]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[nails]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
