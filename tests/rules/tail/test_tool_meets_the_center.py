"""A tail center wider than the finished end is cut by the tool."""

import pytest

from tests.rules.bench import fired

RULE = "tool-meets-the-center"
FIRES = [
    "SPINDLE; hold.tail.kind=live-cup; work.finished_diameter=12mm",
    "SPINDLE; hold.tail.kind=live-cup; work.finished_diameter=12mm; work.diameter=1.3in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.tail.kind=live-cup; work.finished_diameter=12mm; work.end_waste=10mm",
    "SPINDLE; hold.tail.kind=live-cup; work.finished_diameter=12mm; work.diameter=1.1in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
