"""A bar that springs under the tool chatters."""

import pytest

from tests.rules.bench import fired

RULE = "springs-under-the-tool"
FIRES = [
    "SPINDLE; work.length=50in; work.finished_diameter=1in",
    "SPINDLE; work.finished_diameter=1in; work.length=14in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.finished_diameter=1in; work.length=13in",
    "SPINDLE; work.length=50in; work.finished_diameter=1in; cut.tool=carriage",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
