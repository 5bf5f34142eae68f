"""A point splits small ends."""

import pytest

from tests.rules.bench import fired

RULE = "point-in-a-small-end"
FIRES = [
    "THIN",
    "NARROW; work.diameter=20mm; hold.drive.outer_diameter=10mm; hold.drive.inner_diameter=4mm",
    "THIN; hold.tail.kind=live-cone",
    "THIN; hold.tail.kind=dead-point",
]
QUIET = [
    "NARROW",
    "SPINDLE; hold.method=spur-drive",
    "THIN; hold.tail.kind=live-cup",
    "PEN",
    "THIN; work.material=aluminum",
    "THIN; work.grain=across",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
