"""The hold that was chosen is not the one to use."""

import pytest

from tests.rules.bench import fired

RULE = "chosen-hold-will-not-do"
FIRES = [
    "BOWL; hold.method=double-sided-tape",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; hold.method=faceplate-screws",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
