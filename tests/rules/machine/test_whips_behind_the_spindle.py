"""A long bar behind the spindle whips and bends square."""

import pytest

from tests.rules.bench import fired

RULE = "whips-behind-the-spindle"
FIRES = [
    "ROD; hold.rear_overhang=600mm",
    "ROD; hold.rear_overhang=300mm",
]
QUIET = [
    "ROD",
    "ROD; hold.rear_overhang=100mm",
    "SPINDLE",
    "ROD; hold.rear_overhang=250mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
