"""A hard catch does not tear it out."""

import pytest

from tests.rules.bench import fired

RULE = "stays-in-a-catch"
FIRES = [
    "BOWL; hold.method=faceplate-screws",
    "ROD@collet",
    "BOWL@waste-block-faceplate",
    "BOWL",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon",
    "HOLLOWING",
    "SPINDLE",
    "BOWL@pin-chuck",
    "SPINDLE; hold.method=spur-drive; work.state=round; machine.power=100W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
