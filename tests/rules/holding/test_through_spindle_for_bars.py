"""Holding through the spindle is for long bars."""

import pytest

from tests.rules.bench import fired

RULE = "through-spindle-for-bars"
FIRES = [
    "BOWL; hold.method=through-spindle",
    "BOWL; hold.method=through-spindle; work.length=24in",
]
QUIET = [
    "ROD; hold.method=through-spindle",
    "ROD; hold.method=through-spindle; work.length=75mm",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
