"""Two spurs in side grain: both ways are in use."""

import pytest

from tests.rules.bench import fired

RULE = "two-spurs-in-side-grain"
FIRES = [
    "BOWL; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE; hold.method=two-spur-drive",
    "BOWL; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
