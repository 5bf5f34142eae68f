"""A hole in the hold is no hold."""

import pytest

from tests.rules.bench import fired

RULE = "hole-where-it-is-held"
FIRES = [
    "PLASTIC; work.material=wood and resin; work.tested=yes; work.condition=[void]",
    "PLASTIC; work.material=plywood; work.condition=[void]",
]
QUIET = [
    "PLASTIC; work.condition=[void]",
    "PLASTIC; work.material=plywood",
    "SPINDLE; work.condition=[void]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
