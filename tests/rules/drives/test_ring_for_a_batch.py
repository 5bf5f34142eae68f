"""For many alike a toothed ring saves the seating."""

import pytest

from tests.rules.bench import fired

RULE = "ring-for-a-batch"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "NARROW",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive; work.moisture=green",
    "BOWL; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
