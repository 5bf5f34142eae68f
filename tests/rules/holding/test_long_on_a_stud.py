"""Long work levers a stud out."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-a-stud"
FIRES = [
    "STONE; hold.method=keyed-stud; work.length=150mm; cut.operation=hollowing",
    "STONE; hold.method=keyed-stud; work.length=101mm; machine.tailstock=no",
]
QUIET = [
    "STONE; hold.method=keyed-stud; work.length=150mm",
    "STONE; hold.method=keyed-stud; cut.operation=hollowing",
    "STONE; work.length=150mm; cut.operation=hollowing; hold.kit=[glue-block]",
    "STONE; hold.method=keyed-stud; cut.operation=hollowing; work.length=100mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
