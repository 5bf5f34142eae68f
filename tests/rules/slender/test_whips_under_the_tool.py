"""A long thin piece bows away from a hand tool."""

import pytest

from tests.rules.bench import fired

RULE = "whips-under-the-tool"
FIRES = [
    "SPINDLE; work.length=50in",
    "SPINDLE; work.length=38in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.length=50in; hold.steady.position=25in",
    "SPINDLE; work.length=30in",
    "SPINDLE; work.length=50in; cut.tool=carriage",
    "SPINDLE; work.length=50in; work.grain=across",
    "SPINDLE; work.length=50in; work.diameter=2in; hold.steady.position=25in",
    "NARROW; work.diameter=40mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
