"""A long overhang levers out of short jaws."""

import pytest

from tests.rules.bench import fired

RULE = "long-in-engineers-jaws"
FIRES = [
    "ROD; hold.kit=[three-jaw]; hold.tail.kind=none; hold.overhang=200mm",
    "ROD; hold.kit=[three-jaw]; hold.tail.kind=none; hold.overhang=200mm; hold.method=four-jaw-independent",
    "ROD; hold.kit=[three-jaw]; hold.tail.kind=none; hold.overhang=200mm; work.diameter=40mm",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "ROD; hold.kit=[three-jaw]; hold.tail.kind=none; hold.overhang=200mm; work.diameter=50mm",
    "ROD; hold.kit=[three-jaw]; hold.overhang=200mm; hold.tail.kind=live-cup",
    "ROD; hold.kit=[three-jaw]; hold.tail.kind=none; hold.overhang=200mm; hold.method=jaws-on-tenon",
    "ROD; hold.tail.kind=none; hold.overhang=200mm; hold.method=four-jaw-independent",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
