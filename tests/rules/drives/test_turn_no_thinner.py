"""Near the drive the tool keeps above its teeth."""

import pytest

from tests.rules.bench import fired

RULE = "turn-no-thinner"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "NARROW; hold.drive.outer_diameter=19mm",
]
QUIET = [
    "NARROW",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
