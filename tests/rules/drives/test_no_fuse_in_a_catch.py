"""Seated teeth hold through a catch."""

import pytest

from tests.rules.bench import fired

RULE = "no-fuse-in-a-catch"
FIRES = [
    "SPINDLE; hold.method=spur-drive; work.state=round; machine.power=100W",
    "SPINDLE; work.state=round; machine.power=100W; hold.method=two-spur-drive",
    "SPINDLE; hold.method=spur-drive; work.state=round; machine.power=100W; work.diameter=1.25in",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=cup-drive",
    "SPINDLE",
    "SPINDLE; work.state=round; machine.power=100W; hold.method=cup-drive",
    "SPINDLE; hold.method=spur-drive; work.state=round; machine.power=100W; work.diameter=1.1in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
