"""Jaws squeeze a side-grain blank oval and dent it."""

import pytest

from tests.rules.bench import fired

RULE = "four-jaws-on-side-grain"
FIRES = [
    "BOWL; hold.method=four-jaw-independent; work.diameter=5in",
]
QUIET = [
    "SPINDLE; hold.method=four-jaw-independent",
    "BOWL; work.diameter=5in; hold.method=jaws-on-tenon",
    "BOWL; hold.method=four-jaw-independent; work.diameter=5in; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
