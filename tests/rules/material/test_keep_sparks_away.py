"""Chips that burn and sparks that wander."""

import pytest

from tests.rules.bench import fired

RULE = "keep-sparks-away"
FIRES = [
    "PLASTIC; work.material=ptfe",
    "PLASTIC; work.material=celluloid; machine.extinguisher=water",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "PLASTIC; work.material=ptfe; work.condition=[nails]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
