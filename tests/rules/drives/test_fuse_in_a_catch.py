"""A ring or pad that slips is a fuse."""

import pytest

from tests.rules.bench import fired

RULE = "fuse-in-a-catch"
FIRES = [
    "SPINDLE; hold.method=cup-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "BALL; hold.method=sphere-cups",
    "SPINDLE; hold.method=cup-drive; machine.power=750W; work.diameter=2.7in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=cup-drive; machine.power=700W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
