"""The carriage of a metal lathe is in the way of everything."""

import pytest

from tests.rules.bench import fired

RULE = "carriage-crash"
FIRES = [
    "ROD",
    "METALBOWL",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; machine.kind=wood-lathe",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
