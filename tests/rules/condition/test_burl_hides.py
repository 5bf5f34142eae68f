"""A burl hides stones, bark and holes."""

import pytest

from tests.rules.bench import fired

RULE = "burl-hides"
FIRES = [
    "BOWL; work.condition=[burl]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[knot]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
