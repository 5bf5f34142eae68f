"""A heavy lopsided blank deserves a balance test."""

import pytest

from tests.rules.bench import fired

RULE = "balance-not-measured"
FIRES = [
    "BOWL; work.mass=8kg",
    "BOWL; work.mass=6kg",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.mass=8kg; work.offset=3mm",
    "BOWL; work.mass=5kg",
    "BOWL; work.mass=8kg; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
