"""A name that says painted says lead until tested."""

import pytest

from tests.rules.bench import fired

RULE = "painted-by-its-name"
FIRES = [
    "SPINDLE; work.material=painted pine",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.condition=[painted]",
    "SPINDLE; work.material=pine",
    "SPINDLE; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
