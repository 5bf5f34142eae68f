"""A cup near the rim breaks it out."""

import pytest

from tests.rules.bench import fired

RULE = "ring-near-the-rim"
FIRES = [
    "NARROW; hold.tail.kind=live-cup; hold.tail.cup_diameter=22mm",
]
QUIET = [
    "NARROW; hold.tail.kind=live-cup",
    "SPINDLE; hold.method=spur-drive",
    "NARROW; hold.tail.kind=live-cup; hold.tail.cup_diameter=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
