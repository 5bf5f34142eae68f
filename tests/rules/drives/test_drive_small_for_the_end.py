"""A drive too small for the end turns into a drill."""

import pytest

from tests.rules.bench import fired

RULE = "drive-small-for-the-end"
FIRES = [
    "SPINDLE; hold.drive.teeth=4; hold.drive.outer_diameter=10mm; hold.drive.inner_diameter=4mm",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "NARROW",
    "BOWL; hold.method=spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
