"""Jaws spreading in cracked or soft wood open it."""

import pytest

from tests.rules.bench import fired

RULE = "recess-in-cracked-wood"
FIRES = [
    "PLATTER; work.condition=[check]",
]
QUIET = [
    "PLATTER",
    "PLATTER; work.condition=[knot]",
    "PLATTER; work.condition=[check]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
