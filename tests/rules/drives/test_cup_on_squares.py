"""A cup slips at the corners of a square."""

import pytest

from tests.rules.bench import fired

RULE = "cup-on-squares"
FIRES = [
    "SPINDLE; hold.method=cup-drive",
]
QUIET = [
    "SPINDLE; hold.method=cup-drive; work.state=round",
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
