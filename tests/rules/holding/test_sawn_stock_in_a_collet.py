"""A collet grips only what was turned to size."""

import pytest

from tests.rules.bench import fired

RULE = "sawn-stock-in-a-collet"
FIRES = [
    "SPINDLE; work.diameter=1.2in; hold.method=collet",
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
