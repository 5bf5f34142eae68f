"""Glue that has not cured is a lubricant."""

import pytest

from tests.rules.bench import fired

RULE = "glue-not-cured"
FIRES = [
    "BOWL; hold.method=glue-block; hold.glue.cured=no",
    "BOWL; hold.glue.cured=no; hold.method=double-sided-tape",
    "BOWL; hold.glue.cured=no; hold.method=paper-joint",
    "BOWL; hold.glue.cured=no; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "BOWL; hold.method=glue-block; hold.glue.cured=yes",
    "BOWL; hold.glue.cured=no; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
