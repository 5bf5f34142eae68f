"""What holds a bar meant to go through the bore."""

import pytest

from tests.rules.bench import fired

RULE = "bar-through-the-bore"
FIRES = [
    "ROD; hold.method=through-spindle",
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
