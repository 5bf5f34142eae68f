"""Clamps need room."""

import pytest

from tests.rules.bench import fired

RULE = "clamps-on-small-work"
FIRES = [
    "DISC; work.diameter=70mm; hold.method=clamped-faceplate",
    "DISC; hold.method=clamped-faceplate; work.diameter=75mm",
]
QUIET = [
    "DISC; hold.method=clamped-faceplate",
    "DISC; work.diameter=70mm; hold.method=jaws-on-tenon",
    "DISC; hold.method=clamped-faceplate; work.diameter=80mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
