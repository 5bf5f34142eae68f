"""A drive that slips at half the cut is not advised."""

import pytest

from tests.rules.bench import fired

RULE = "slips-too-soon"
FIRES = [
    "SPINDLE; hold.method=cup-drive; work.diameter=6in",
    "SPINDLE; work.diameter=6in; hold.method=toothed-ring-drive",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; hold.method=mandrel",
    "SPINDLE; work.diameter=6in; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
