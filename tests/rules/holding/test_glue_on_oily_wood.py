"""Oily wood sheds glue."""

import pytest

from tests.rules.bench import fired

RULE = "glue-on-oily-wood"
FIRES = [
    "BOWL; hold.method=glue-block; work.condition=[oily]",
    "BOWL; work.condition=[oily]; hold.method=double-sided-tape",
    "BOWL; work.condition=[oily]; hold.method=paper-joint",
    "BOWL; work.condition=[oily]; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "BOWL; work.condition=[oily]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
