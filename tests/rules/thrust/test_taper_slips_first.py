"""The taper of the center can turn in the spindle before the teeth slip."""

import pytest

from tests.rules.bench import fired

RULE = "taper-slips-first"
FIRES = [
    "SPINDLE; machine.spindle_taper=1",
    "SPINDLE; machine.spindle_taper=5",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; machine.spindle_taper=4; hold.drive.taper_seated=yes",
    "SPINDLE; hold.method=spur-drive; machine.spindle_taper=4; work.diameter=2in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
