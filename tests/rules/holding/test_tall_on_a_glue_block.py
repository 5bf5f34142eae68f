"""Tall work peels off its block."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-a-glue-block"
FIRES = [
    "SPINDLE; hold.method=glue-block",
    "SPINDLE; hold.method=waste-block-faceplate",
    "SPINDLE; hold.method=glue-block; work.length=7.5in",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "SPINDLE; hold.method=glue-block; work.diameter=8in",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=glue-block; cut.operation=hollowing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
