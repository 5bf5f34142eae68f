"""A rod as bought is seldom round."""

import pytest

from tests.rules.bench import fired

RULE = "rough-rod-in-a-collet"
FIRES = [
    "ROD; work.state=not-round; hold.method=collet",
    "ROD; work.state=not-round; hold.method=collet-block",
    "ROD; work.state=not-round; hold.method=soft-jaws",
    "ROD; work.state=not-round; hold.method=split-bushing",
    "ROD; work.state=not-round; hold.method=collet; work.form=ring",
    "ROD; work.state=not-round; hold.method=collet; work.form=tube",
    "ROD; work.state=not-round; hold.method=collet; work.form=sphere",
]
QUIET = [
    "ROD; hold.method=collet",
    "ROD; work.state=not-round; hold.method=jaws-on-tenon",
    "ROD; work.state=not-round; hold.method=collet; work.form=slab",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
