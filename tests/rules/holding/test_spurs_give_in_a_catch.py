"""In a hard catch spurs tear out."""

import pytest

from tests.rules.bench import fired

RULE = "spurs-give-in-a-catch"
FIRES = [
    "SPINDLE",
    "BOWL@spur-drive",
    "BOWL@two-spur-drive",
    "SPINDLE; machine.power=700W",
]
QUIET = [
    "SPINDLE@toothed-ring-drive",
    "BALL",
    "BOWL@faceplate-screws",
    "HOLLOWING",
    "SPINDLE; machine.power=650W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
