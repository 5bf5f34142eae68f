"""The drive lets go before its shank."""

import pytest

from tests.rules.bench import fired

RULE = "drive-before-the-taper"
FIRES = [
    "SPINDLE; machine.spindle_taper=5; hold.drive.taper_seated=yes; hold.method=cup-drive",
    "SPINDLE; hold.method=spur-drive; machine.spindle_taper=1; work.diameter=2in; hold.drive.taper_seated=yes",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; machine.spindle_taper=1; hold.method=spur-drive",
    "SPINDLE; machine.spindle_taper=2; work.diameter=3in; hold.drive.taper_seated=yes; hold.method=spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
