"""A slim center where the end is to be seen."""

import pytest

from tests.rules.bench import fired

RULE = "see-the-end"
FIRES = [
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm",
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup",
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm; work.purpose=box",
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm; work.purpose=handle",
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm; work.purpose=sphere",
]
QUIET = [
    "KNOB; hold.method=spur-drive",
    "SPINDLE; hold.method=spur-drive",
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm; work.purpose=pen",
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm; work.diameter=2.8in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
