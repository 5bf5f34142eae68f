"""Green wood shrinks out of a collet."""

import pytest

from tests.rules.bench import fired

RULE = "green-in-a-full-grip"
FIRES = [
    "ROD; hold.method=collet; work.moisture=green",
    "ROD; work.moisture=green; hold.method=drill-chuck",
    "ROD; work.moisture=green; hold.method=collet-block",
    "ROD; work.moisture=green; hold.method=soft-jaws",
    "ROD; work.moisture=green; hold.method=split-bushing",
]
QUIET = [
    "ROD; hold.method=collet",
    "ROD; work.moisture=green; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
