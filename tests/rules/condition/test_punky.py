"""Punky wood crumbles in the hold."""

import pytest

from tests.rules.bench import fired

RULE = "punky"
FIRES = [
    "BOWL; work.condition=[punky]",
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
