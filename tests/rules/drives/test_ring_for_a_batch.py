"""For many alike a toothed ring saves the seating."""

import pytest

from tests.rules.bench import fired

RULE = "ring-for-a-batch"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "NARROW",
    "NARROW; work.diameter=12mm",
    "SPINDLE; hold.method=spur-drive; work.diameter=4.5in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive; work.moisture=green",
    "BOWL; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "NARROW; work.diameter=100mm",
    "SPINDLE; hold.method=spur-drive; work.diameter=0.65in",
    "NARROW; work.grain=across",
    "SPINDLE; hold.method=spur-drive; work.condition=[check]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
