"""No room for a cut beside the drive."""

import pytest

from tests.rules.bench import fired

RULE = "no-cut-at-the-drive"
FIRES = [
    "NARROW",
    "THIN",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "NARROW; hold.drive.outer_diameter=19mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
