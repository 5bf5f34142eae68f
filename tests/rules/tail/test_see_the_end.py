"""A slim center where the end is to be seen."""

import pytest

from tests.rules.bench import fired

RULE = "see-the-end"
FIRES = [
    "KNOB; hold.method=spur-drive; hold.tail.kind=live-cup; hold.tail.cup_diameter=25mm",
]
QUIET = [
    "KNOB; hold.method=spur-drive",
    "SPINDLE; hold.method=spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
