"""A drill chuck holds only what fits in it."""

import pytest

from tests.rules.bench import fired

RULE = "too-large-for-drill-chuck"
FIRES = [
    "ROD; hold.method=drill-chuck",
    "ROD; hold.method=drill-chuck; work.diameter=15mm",
]
QUIET = [
    "SPINDLE",
    "ROD; work.diameter=10mm; hold.method=drill-chuck",
    "ROD; hold.method=drill-chuck; work.diameter=12mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
