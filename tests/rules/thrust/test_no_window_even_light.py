"""Not even light cuts find a safe thrust."""

import pytest

from tests.rules.bench import fired

RULE = "no-window-even-light"
FIRES = [
    "SPINDLE; hold.method=cup-drive; work.condition=[pith]; work.diameter=5in",
    "SPINDLE; hold.method=cup-drive; work.condition=[pith]; work.diameter=5in; cut.operation=finishing",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "THIN",
    "SPINDLE; work.condition=[pith]; work.diameter=5in; hold.method=friction-block",
    "SPINDLE; hold.method=cup-drive; work.condition=[pith]; work.diameter=5in; hold.tail.kind=dead-cup",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
