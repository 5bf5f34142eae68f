"""A drive wider than the finished end is cut by the tool."""

import pytest

from tests.rules.bench import fired

RULE = "tool-meets-the-drive"
FIRES = [
    "SPINDLE; work.finished_diameter=20mm",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.finished_diameter=60mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
