"""Three diameters out of the jaws asks for care."""

import pytest

from tests.rules.bench import fired

RULE = "out-of-engineers-jaws"
FIRES = [
    "ROD; hold.method=three-jaw; hold.tail.kind=none; hold.overhang=85mm",
    "ROD; hold.tail.kind=none; hold.overhang=85mm; hold.method=four-jaw-independent",
    "ROD; hold.method=three-jaw; hold.tail.kind=none; hold.overhang=100mm",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "ROD; hold.method=three-jaw; hold.tail.kind=none; hold.overhang=75mm",
    "ROD; hold.method=three-jaw; hold.tail.kind=none; hold.overhang=85mm; work.diameter=20mm",
    "ROD; hold.tail.kind=none; hold.overhang=85mm; hold.method=jaws-on-tenon",
    "ROD; hold.method=three-jaw; hold.overhang=85mm; hold.tail.kind=live-cup",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
