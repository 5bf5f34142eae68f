"""Rags with oil finish heat themselves."""

import pytest

from tests.rules.bench import fired

RULE = "finish-rags"
FIRES = [
    "SPINDLE; cut.operation=finishing",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; cut.operation=shaping",
    "PLASTIC; cut.operation=finishing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
