"""Spurs in line with a check split it."""

import pytest

from tests.rules.bench import fired

RULE = "spurs-on-a-check"
FIRES = [
    "SPINDLE; work.condition=[check]",
    "SPINDLE; work.condition=[check]; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.condition=[check]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
