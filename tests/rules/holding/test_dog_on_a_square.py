"""A dog grips round stock."""

import pytest

from tests.rules.bench import fired

RULE = "dog-on-a-square"
FIRES = [
    "SPINDLE; hold.method=driving-dog; work.diameter=2in",
]
QUIET = [
    "ROD; hold.method=driving-dog",
    "SPINDLE; work.diameter=2in; hold.method=jaws-on-tenon",
    "ROD; hold.method=driving-dog; work.form=tube",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
