"""The shank lets go before the teeth."""

import pytest

from tests.rules.bench import fired

RULE = "taper-before-the-teeth"
FIRES = [
    "SPINDLE; machine.spindle_taper=1; hold.method=spur-drive",
    "SPINDLE; hold.method=spur-drive; machine.spindle_taper=4",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; machine.spindle_taper=5; hold.drive.taper_seated=yes; hold.method=cup-drive",
    "SPINDLE; hold.method=spur-drive; machine.spindle_taper=5",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
