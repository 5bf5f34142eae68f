"""Glue that has not cured is a lubricant."""

import pytest

from tests.rules.bench import fired

RULE = "glue-not-cured"
FIRES = [
    "BOWL; hold.method=glue-block; hold.glue.cured=no",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "BOWL; hold.method=glue-block; hold.glue.cured=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
