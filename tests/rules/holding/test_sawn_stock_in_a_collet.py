"""A collet grips only what was turned to size."""

import pytest

from tests.rules.bench import fired

RULE = "sawn-stock-in-a-collet"
FIRES = [
    "SPINDLE; work.diameter=1.2in; hold.method=collet",
    "SPINDLE; work.diameter=1.2in; hold.method=collet-block",
    "SPINDLE; work.diameter=1.2in; hold.method=soft-jaws",
    "SPINDLE; work.diameter=1.2in; hold.method=split-bushing",
]
QUIET = [
    "ROD; hold.method=collet",
    "SPINDLE; work.diameter=1.2in; hold.method=collet; work.form=round",
    "SPINDLE; work.diameter=1.2in; hold.method=jaws-on-tenon",
    "SPINDLE; work.diameter=1.2in; hold.method=collet; work.state=round",
    "SPINDLE; work.diameter=1.2in; hold.method=collet; work.form=ring",
    "SPINDLE; work.diameter=1.2in; hold.method=collet; work.form=tube",
    "SPINDLE; work.diameter=1.2in; hold.method=collet; work.form=sphere",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
