"""Jaws spreading in end grain split it."""

import pytest

from tests.rules.bench import fired

RULE = "recess-in-end-grain"
FIRES = [
    "HOLLOW; hold.method=jaws-in-recess",
]
QUIET = [
    "PLATTER",
    "BOWL; hold.method=jaws-on-tenon",
    "HOLLOW; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
