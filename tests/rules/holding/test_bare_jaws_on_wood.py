"""Bare three jaws crush wood."""

import pytest

from tests.rules.bench import fired

RULE = "bare-jaws-on-wood"
FIRES = [
    "ROD; hold.method=three-jaw",
    "ROD; hold.method=three-jaw; work.form=ring",
    "ROD; hold.method=three-jaw; work.form=tube",
    "ROD; hold.method=three-jaw; work.form=sphere",
]
QUIET = [
    "ROD; hold.kit=[three-jaw]",
    "SPINDLE",
    "ROD; hold.method=jaws-on-tenon",
    "ROD; hold.method=three-jaw; work.material=aluminum",
    "ROD; hold.method=three-jaw; work.form=slab",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
