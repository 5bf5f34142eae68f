"""Castings, board and pods hide holes."""

import pytest

from tests.rules.bench import fired

RULE = "look-for-holes"
FIRES = [
    "PLASTIC; work.material=plywood",
    "PLASTIC; work.material=wood and resin; work.tested=yes",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "PLASTIC; work.material=plywood; work.condition=[sound]",
    "PLASTIC; work.material=plywood; work.condition=[void]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
