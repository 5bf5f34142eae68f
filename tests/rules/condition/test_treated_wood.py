"""Treated and creosoted wood poisons the shop."""

import pytest

from tests.rules.bench import fired

RULE = "treated-wood"
FIRES = [
    "BOWL; work.condition=[treated]",
    "SPINDLE; work.condition=[treated]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[painted]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
