"""Hard wood wants a kerf and a center hole."""

import pytest

from tests.rules.bench import fired

RULE = "kerf-for-hard-wood"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=two-spur-drive",
    "SPINDLE; hold.method=spur-drive; work.moisture=22%",
]
QUIET = [
    "SPINDLE; work.material=ponderosa pine; hold.method=spur-drive",
    "SPINDLE; hold.drive.seated_depth=4mm",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=spur-drive; work.grain=across",
    "SPINDLE; hold.method=spur-drive; work.moisture=20%; work.material=black cherry",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
