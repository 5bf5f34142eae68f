"""A toolpost tool does not give way to a bending bar."""

import pytest

from tests.rules.bench import fired

RULE = "whips-under-the-carriage"
FIRES = [
    "ROD; work.length=400mm; cut.tool=carriage",
    "ROD; cut.tool=carriage; work.length=300mm",
]
QUIET = [
    "ROD",
    "SPINDLE",
    "ROD; work.length=400mm",
    "ROD; cut.tool=carriage; work.length=250mm",
    "ROD; work.length=400mm; cut.tool=carriage; hold.steady.position=280mm",
    "ROD; work.length=400mm; cut.tool=carriage; work.grain=across",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
