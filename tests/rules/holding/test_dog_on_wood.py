"""A dog crushes bare wood."""

import pytest

from tests.rules.bench import fired

RULE = "dog-on-wood"
FIRES = [
    "ROD; hold.method=driving-dog",
]
QUIET = [
    "SPINDLE",
    "PLASTIC; hold.method=driving-dog",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
