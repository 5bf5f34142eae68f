"""A two-spur blade in end grain is a splitting wedge."""

import pytest

from tests.rules.bench import fired

RULE = "two-spurs-in-end-grain"
FIRES = [
    "SPINDLE; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "BOWL; hold.method=two-spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
