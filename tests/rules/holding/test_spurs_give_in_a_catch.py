"""In a hard catch spurs tear out."""

import pytest

from tests.rules.bench import fired

RULE = "spurs-give-in-a-catch"
FIRES = [
    "SPINDLE",
    "BOWL@spur-drive",
    "BOWL@two-spur-drive",
]
QUIET = [
    "SPINDLE@toothed-ring-drive",
    "BALL",
    "BOWL@faceplate-screws",
    "HOLLOWING",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
