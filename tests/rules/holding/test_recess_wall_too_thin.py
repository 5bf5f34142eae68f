"""A recess needs wood around it."""

import pytest

from tests.rules.bench import fired

RULE = "recess-wall-too-thin"
FIRES = [
    "PLATTER; hold.recess.wall=10mm",
    "PLATTER; hold.recess.wall=12mm",
]
QUIET = [
    "PLATTER",
    "PLATTER; hold.recess.wall=15mm",
    "PEN; work.length=200mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
