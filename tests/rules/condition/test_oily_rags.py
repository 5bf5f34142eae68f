"""Oily dust and rags heat themselves."""

import pytest

from tests.rules.bench import fired

RULE = "oily-rags"
FIRES = [
    "SPINDLE; work.condition=[oily]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.condition=[knot]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
