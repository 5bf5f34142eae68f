"""A dead center makes heat with thrust, radius and speed."""

import pytest

from tests.rules.bench import fired

RULE = "dead-center-heats"
FIRES = [
    "SPINDLE; hold.method=spur-drive; hold.tail.kind=dead-cup",
    "SPINDLE; work.material=ponderosa pine; hold.tail.kind=dead-point; work.diameter=1in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.tail.kind=live-cup",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
