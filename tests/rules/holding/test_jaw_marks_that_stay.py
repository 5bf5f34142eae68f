"""Jaws and teeth mark a finished surface."""

import pytest

from tests.rules.bench import fired

RULE = "jaw-marks-that-stay"
FIRES = [
    "ROD; work.state=finished; work.marks_allowed=none; hold.method=three-jaw",
    "ROD; work.state=finished; work.marks_allowed=none; hold.method=drill-chuck",
    "ROD; work.state=finished; work.marks_allowed=none; hold.method=four-jaw-independent",
    "ROD; work.state=finished; work.marks_allowed=none; hold.method=long-jaws",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "ROD; work.state=finished; work.marks_allowed=none; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
