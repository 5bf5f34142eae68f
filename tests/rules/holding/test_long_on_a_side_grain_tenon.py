"""More than three tenon diameters out of a side-grain tenon levers off."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-a-side-grain-tenon"
FIRES = [
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=220mm",
]
QUIET = [
    "HOLLOWING; hold.tenon.diameter=60mm",
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=180mm",
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=220mm; hold.method=cup-drive",
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=220mm; work.grain=along",
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=220mm; cut.operation=finishing",
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=220mm; work.diameter=3in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
