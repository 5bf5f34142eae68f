"""Clamps and bolts sweep round."""

import pytest

from tests.rules.bench import fired

RULE = "clamps-stand-out"
FIRES = [
    "DISC; hold.method=clamped-faceplate",
    "DISC; hold.method=clamped-faceplate; work.length=24mm",
]
QUIET = [
    "BOWL; hold.method=clamped-faceplate",
    "SPINDLE",
    "DISC; hold.method=clamped-faceplate; work.length=30mm",
    "DISC; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
