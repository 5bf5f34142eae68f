"""Frozen wood thaws in the hold."""

import pytest

from tests.rules.bench import fired

RULE = "frozen"
FIRES = [
    "BOWL; work.moisture=frozen",
]
QUIET = [
    "BOWL",
    "BOWL; work.moisture=green",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
