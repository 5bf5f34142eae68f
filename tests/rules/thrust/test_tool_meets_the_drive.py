"""A drive wider than the finished end is cut by the tool."""

import pytest

from tests.rules.bench import fired

RULE = "tool-meets-the-drive"
FIRES = [
    "SPINDLE; work.finished_diameter=20mm",
    "SPINDLE; work.finished_diameter=20mm; work.diameter=2.6in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.finished_diameter=60mm",
    "SPINDLE; work.finished_diameter=20mm; hold.drive.outer_diameter=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
