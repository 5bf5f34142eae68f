"""Pressing teeth in with the tailstock takes more than the wood stands."""

import pytest

from tests.rules.bench import fired

RULE = "pressed-in-too-hard"
FIRES = [
    "SPINDLE",
    "SPINDLE; work.material=ponderosa pine; work.form=round; work.state=round; hold.tail.kind=live-cup; "
    "hold.drive.teeth=6; hold.drive.outer_diameter=10mm; hold.drive.inner_diameter=6mm; work.diameter=2in",
]
QUIET = [
    "SPINDLE; hold.drive.seated_depth=4mm",
    "SPINDLE; hold.method=cup-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "BOWL; work.condition=[live-edge]",
    "SPINDLE; work.material=ponderosa pine; work.form=round; work.state=round; hold.tail.kind=live-cup; "
    "hold.drive.teeth=4; hold.drive.outer_diameter=20mm; hold.drive.inner_diameter=6mm; work.diameter=2in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
