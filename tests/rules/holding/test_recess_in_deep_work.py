"""A recess does not hold deep hollowing."""

import pytest

from tests.rules.bench import fired

RULE = "recess-in-deep-work"
FIRES = [
    "BOWL; hold.method=jaws-in-recess; work.state=round; cut.operation=hollowing; work.length=150mm",
]
QUIET = [
    "PLATTER",
    "BOWL; hold.method=jaws-in-recess; work.state=round; cut.operation=hollowing; work.length=125mm",
    "BOWL; work.state=round; cut.operation=hollowing; work.length=150mm; hold.method=jaws-on-tenon",
    "BOWL; hold.method=jaws-in-recess; work.state=round; work.length=150mm; cut.operation=finishing",
    "BOWL; hold.method=jaws-in-recess; work.state=round; cut.operation=hollowing; work.diameter=200mm; "
    "work.length=100mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
