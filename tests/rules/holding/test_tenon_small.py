"""A tenon under a quarter of the bowl wants the tailstock."""

import pytest

from tests.rules.bench import fired

RULE = "tenon-small"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm",
    "BOWL; hold.method=jaws-on-tenon; work.diameter=300mm; hold.tenon.diameter=60mm",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=90mm",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm; work.diameter=11in",
    "BOWL; hold.tenon.diameter=55mm; hold.method=collet",
    "BOWL; work.diameter=17in; work.length=8in; machine.mass=900kg; work.state=round",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm; work.grain=along",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm; cut.operation=hollowing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
