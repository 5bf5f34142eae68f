"""A toolpost cut shows every spring of the bar."""

import pytest

from tests.rules.bench import fired

RULE = "springs-under-the-toolpost"
FIRES = [
    "ROD; work.length=400mm; cut.tool=carriage",
    "ROD; cut.tool=carriage; work.length=250mm",
]
QUIET = [
    "SPINDLE",
    "ROD",
    "ROD; cut.tool=carriage; work.length=220mm",
    "ROD; work.length=400mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
