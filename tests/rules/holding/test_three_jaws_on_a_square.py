"""Three jaws grip only what is round or hexagonal."""

import pytest

from tests.rules.bench import fired

RULE = "three-jaws-on-a-square"
FIRES = [
    "SPINDLE; hold.method=three-jaw",
    "SPINDLE; hold.method=three-jaw; work.form=slab",
    "SPINDLE; hold.method=three-jaw; work.form=segmented",
    "SPINDLE; hold.method=three-jaw; work.form=disc",
    "SPINDLE; hold.method=three-jaw; work.form=half-log",
    "SPINDLE; hold.method=three-jaw; work.form=octagon",
    "SPINDLE; hold.method=three-jaw; work.form=log",
    "SPINDLE; hold.method=three-jaw; work.form=irregular",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "SPINDLE; hold.method=four-jaw-independent",
    "SPINDLE; hold.method=three-jaw; work.state=round",
    "SPINDLE; hold.method=three-jaw; work.form=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
