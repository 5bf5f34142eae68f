"""What holds a bar that stands out behind the spindle."""

import pytest

from tests.rules.bench import fired

RULE = "bar-behind-the-spindle"
FIRES = [
    "ROD; hold.rear_overhang=100mm",
]
QUIET = [
    "SPINDLE",
    "ROD",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
