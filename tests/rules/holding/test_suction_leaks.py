"""Suction leaks through cracks and holes."""

import pytest

from tests.rules.bench import fired

RULE = "suction-leaks"
FIRES = [
    "BOWL; hold.method=vacuum; work.state=finished; work.condition=[worm-holes]",
]
QUIET = [
    "BOWL; hold.method=vacuum; work.state=finished",
    "BOWL; work.state=finished; work.condition=[worm-holes]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
