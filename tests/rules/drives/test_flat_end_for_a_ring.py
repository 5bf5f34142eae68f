"""A ring drives on the whole rim or on one tooth."""

import pytest

from tests.rules.bench import fired

RULE = "flat-end-for-a-ring"
FIRES = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=cup-drive",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
