"""Sanding makes the finest dust there is."""

import pytest

from tests.rules.bench import fired

RULE = "sanding-with-a-bare-face"
FIRES = [
    "SPINDLE; cut.operation=sanding; person.respirator=none",
]
QUIET = [
    "SPINDLE; cut.operation=sanding",
    "SPINDLE; person.respirator=none",
    "SPINDLE",
    "SPINDLE; cut.operation=sanding; person.respirator=none; work.moisture=green",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
