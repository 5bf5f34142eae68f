"""Tall work peels off tape."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-tape"
FIRES = [
    "DISC; hold.method=double-sided-tape; work.length=40mm",
    "TAPETALL",
]
QUIET = [
    "DISC; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
