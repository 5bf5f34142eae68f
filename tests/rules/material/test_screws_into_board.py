"""Screws split board along its edge and strip its face."""

import pytest

from tests.rules.bench import fired

RULE = "screws-into-board"
FIRES = [
    "PLASTIC; work.material=mdf; hold.method=faceplate-screws",
]
QUIET = [
    "PLASTIC; work.material=mdf; hold.method=glue-block",
    "BOWL; hold.method=faceplate-screws",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
