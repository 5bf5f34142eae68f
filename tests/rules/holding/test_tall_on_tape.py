"""Tall work peels off tape."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-tape"
FIRES = [
    "DISC; hold.method=double-sided-tape; work.length=40mm",
    "TAPETALL",
    "DISC; hold.method=double-sided-tape; work.length=25mm",
]
QUIET = [
    "DISC; hold.method=double-sided-tape",
    "DISC; hold.method=double-sided-tape; work.length=20mm",
    "DISC; work.length=40mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
