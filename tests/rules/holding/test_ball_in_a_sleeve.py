"""A ball in a sleeve touches on a line."""

import pytest

from tests.rules.bench import fired

RULE = "ball-in-a-sleeve"
FIRES = [
    "BALL; hold.method=collet; work.diameter=35mm; work.length=35mm",
    "BALL@split-bushing",
    "BALL; work.diameter=35mm; work.length=35mm; hold.method=collet-block",
]
QUIET = [
    "BALL@soft-jaws",
    "ROD@collet",
    "ROD@split-bushing",
    "BALL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
