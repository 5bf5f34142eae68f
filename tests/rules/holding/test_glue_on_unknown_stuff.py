"""Glue on what nobody knows is a guess."""

import pytest

from tests.rules.bench import fired

RULE = "glue-on-unknown-stuff"
FIRES = [
    "BOWL; work.material=flubberwood; hold.method=glue-block",
    "BOWL; work.material=flubberwood; hold.method=double-sided-tape",
    "BOWL; work.material=flubberwood; hold.method=paper-joint",
    "BOWL; work.material=flubberwood; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "BOWL; work.material=flubberwood; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
