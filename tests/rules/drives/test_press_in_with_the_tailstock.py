"""Soft wood takes the teeth from the tailstock."""

import pytest

from tests.rules.bench import fired

RULE = "press-in-with-the-tailstock"
PINE = (
    "SPINDLE; work.material=ponderosa pine; work.form=round; work.state=round; hold.tail.kind=live-cup; "
    "hold.drive.teeth=4; hold.drive.outer_diameter=20mm; hold.drive.inner_diameter=10mm; "
    "cut.operation=finishing"
)
FIRES = [
    PINE,
    f"{PINE}; work.diameter=5in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.drive.seated_depth=4mm",
    "SPINDLE; hold.method=toothed-ring-drive",
    f"{PINE}; hold.drive.seated_depth=2mm",
    f"{PINE}; work.diameter=6in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
