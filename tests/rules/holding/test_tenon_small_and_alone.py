"""A small tenon without the tailstock is not advised."""

import pytest

from tests.rules.bench import fired

RULE = "tenon-small-and-alone"
HOLLOWED = "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm; cut.operation=hollowing; work.state=round"
FIRES = [
    HOLLOWED,
    "BOWL; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.diameter=250mm; "
    "hold.tenon.diameter=50mm",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm",
    f"{HOLLOWED}; work.diameter=11in",
    f"{HOLLOWED}; work.diameter=8.5in",
    "BOWL; hold.tenon.diameter=55mm; cut.operation=hollowing; work.state=round; hold.method=collet",
    f"{HOLLOWED}; work.grain=along",
    "BOWL; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.diameter=240mm; "
    "hold.tenon.diameter=60mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
