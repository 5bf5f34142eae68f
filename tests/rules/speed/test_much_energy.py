"""More than 50 joules at the first start is past any face shield."""

import pytest

from tests.rules.bench import fired

RULE = "much-energy"
FIRES = [
    "BOWL; work.diameter=17in; work.length=8in; machine.mass=900kg; work.state=round",
    "BOWL; work.diameter=17in; machine.mass=900kg; work.state=round; work.length=5in",
]
QUIET = [
    "SPINDLE",
    "ROD",
    "BOWL; work.diameter=17in; machine.mass=900kg; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
