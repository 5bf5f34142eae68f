"""Jaws and teeth mark a finished surface."""

import pytest

from tests.rules.bench import fired

RULE = "jaw-marks-that-stay"
FIRES = [
    "ROD; work.state=finished; work.marks_allowed=none; hold.method=three-jaw",
]
QUIET = [
    "ROD; hold.method=three-jaw",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
