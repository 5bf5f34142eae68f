"""A rod as bought is seldom round."""

import pytest

from tests.rules.bench import fired

RULE = "rough-rod-in-a-collet"
FIRES = [
    "ROD; work.state=not-round; hold.method=collet",
]
QUIET = [
    "ROD; hold.method=collet",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
