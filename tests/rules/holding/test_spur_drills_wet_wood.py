"""A slipping spur becomes a drill in wet wood."""

import pytest

from tests.rules.bench import fired

RULE = "spur-drills-wet-wood"
FIRES = [
    "BOWL; hold.method=spur-drive; work.moisture=green; work.mass=8kg",
    "BOWL; work.moisture=green; work.mass=8kg; hold.method=two-spur-drive",
    "BOWL; hold.method=spur-drive; work.moisture=green; work.mass=6kg",
]
QUIET = [
    "BOWL; hold.method=spur-drive",
    "SPINDLE",
    "BOWL; hold.method=spur-drive; work.moisture=green; work.mass=5kg",
    "BOWL; work.moisture=green; work.mass=8kg; hold.method=jaws-on-tenon",
    "BOWL; hold.method=spur-drive; work.mass=8kg; work.moisture=dry",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
