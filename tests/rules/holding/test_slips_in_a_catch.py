"""In a hard catch it turns in the hold."""

import pytest

from tests.rules.bench import fired

RULE = "slips-in-a-catch"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon",
    "DISC@jaws-on-tenon",
    "BOWL@double-sided-tape",
]
QUIET = [
    "HOLLOWING",
    "BOWL; hold.method=faceplate-screws",
    "SPINDLE",
    "BALL",
    "PLATTER@friction-block",
    "ROD@collet",
    "BOWL; hold.method=jaws-on-tenon; machine.power=1800W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
