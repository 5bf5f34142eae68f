"""More than two tenon diameters without the tailstock asks for care."""

import pytest

from tests.rules.bench import fired

RULE = "stands-out-of-the-tenon"
FIRES = [
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=170mm",
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=160mm",
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=220mm",
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=170mm; hold.method=long-jaws",
    "HOLLOWING; hold.tenon.diameter=60mm; work.length=240mm",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
    "HOLLOWING; work.length=170mm; hold.tenon.diameter=85mm",
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=260mm",
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=170mm; hold.method=spur-drive",
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=170mm; cut.operation=finishing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
