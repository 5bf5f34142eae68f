"""A dead center can drag harder than the drive turns."""

import pytest

from tests.rules.bench import fired

RULE = "dead-center-drags"
FIRES = [
    "SPINDLE; hold.method=cup-drive; hold.tail.kind=dead-cup; hold.tail.cup_diameter=38mm",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; hold.tail.kind=dead-point",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
