"""The rear of a bar through the spindle must be carried."""

import pytest

from tests.rules.bench import fired

RULE = "through-spindle-rear-end"
FIRES = [
    "ROD; hold.method=through-spindle",
    "ROD; hold.method=through-spindle; work.length=75mm",
]
QUIET = [
    "SPINDLE",
    "ROD; hold.method=through-spindle; work.length=70mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
