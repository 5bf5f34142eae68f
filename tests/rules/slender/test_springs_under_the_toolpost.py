"""A toolpost cut shows every spring of the bar."""

import pytest

from tests.rules.bench import fired

RULE = "springs-under-the-toolpost"
FIRES = [
    "ROD; work.length=400mm; cut.tool=carriage",
]
QUIET = [
    "SPINDLE",
    "ROD",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
