"""A point finds a popped mark."""

import pytest

from tests.rules.bench import fired

RULE = "pop-the-centers"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "BOWL; hold.method=two-spur-drive",
    "SPINDLE; hold.method=cup-drive",
    "SPINDLE; hold.method=point-and-pin-drive",
]
QUIET = [
    "SPINDLE; hold.method=jaws-on-tenon",
    "BALL; hold.method=sphere-cups",
    "SPINDLE; hold.method=square-socket-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
