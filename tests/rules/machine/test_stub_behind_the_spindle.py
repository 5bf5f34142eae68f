"""Even a short stub behind the spindle must be centered."""

import pytest

from tests.rules.bench import fired

RULE = "stub-behind-the-spindle"
FIRES = [
    "ROD; hold.rear_overhang=100mm",
    "ROD; hold.rear_overhang=250mm",
]
QUIET = [
    "ROD",
    "ROD; hold.rear_overhang=600mm",
    "SPINDLE",
    "ROD; hold.rear_overhang=260mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
