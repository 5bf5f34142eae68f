"""Clamps hold flat work."""

import pytest

from tests.rules.bench import fired

RULE = "clamps-on-tall-work"
FIRES = [
    "BOWL; hold.method=clamped-faceplate",
    "BOWL; hold.method=clamped-faceplate; work.length=3in",
]
QUIET = [
    "DISC; hold.method=clamped-faceplate",
    "BOWL; hold.method=jaws-on-tenon",
    "BOWL; hold.method=clamped-faceplate; work.length=2.8in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
