"""More than four tenon diameters out of an end-grain tenon levers out."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-an-end-grain-tenon"
FIRES = [
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=300mm",
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=200mm",
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=300mm; hold.method=long-jaws",
]
QUIET = [
    "HOLLOW; hold.method=jaws-on-tenon",
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=160mm",
    "HOLLOW; hold.tenon.diameter=40mm; work.length=300mm",
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=300mm; hold.method=cup-drive",
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=300mm; work.grain=across",
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=300mm; cut.operation=finishing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
