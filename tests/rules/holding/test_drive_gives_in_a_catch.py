"""A drive that slips is a fuse."""

import pytest

from tests.rules.bench import fired

RULE = "drive-gives-in-a-catch"
FIRES = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "BALL",
    "SPINDLE@cup-drive",
    "PLATTER@friction-block",
    "SPINDLE; hold.method=toothed-ring-drive; machine.power=400W",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=jaws-on-tenon",
    "ROD@toothed-ring-drive; cut.tool=carriage",
    "ROD@collet",
    "SPINDLE; hold.method=toothed-ring-drive; machine.power=320W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
