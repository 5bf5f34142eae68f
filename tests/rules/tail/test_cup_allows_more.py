"""A ring at the tail lets more thrust through than a point."""

import pytest

from tests.rules.bench import fired

RULE = "cup-allows-more"
FIRES = [
    "NARROW",
    "SPINDLE; work.diameter=1in",
]
QUIET = [
    "THIN",
    "SPINDLE; hold.method=spur-drive",
    "NARROW; hold.tail.kind=live-cup",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
