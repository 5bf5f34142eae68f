"""Chips that burn are cleared as they come."""

import pytest

from tests.rules.bench import fired

RULE = "chips-that-burn"
FIRES = [
    "PLASTIC; work.material=aluminum",
    "PLASTIC; work.material=mdf",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
