"""A drive too small for the end turns into a drill."""

import pytest

from tests.rules.bench import fired

RULE = "drive-small-for-the-end"
SMALL = "SPINDLE; hold.drive.teeth=4; hold.drive.outer_diameter=10mm; hold.drive.inner_diameter=4mm"
FIRES = [
    SMALL,
    "SPINDLE; hold.drive.teeth=4; hold.drive.inner_diameter=4mm; hold.drive.outer_diameter=12mm",
    f"{SMALL}; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "NARROW",
    "BOWL; hold.method=spur-drive",
    "NARROW; work.diameter=100mm",
    "SPINDLE; hold.method=spur-drive; work.diameter=12in",
    f"{SMALL}; hold.method=cup-drive",
    f"{SMALL}; work.grain=across",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
