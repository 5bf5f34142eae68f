"""No thrust drives this work without splitting, crushing or bowing it."""

import pytest

from tests.rules.bench import fired

RULE = "no-window"
FIRES = [
    "THIN",
    "THIN; cut.force=8N",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "THIN; work.diameter=40mm; work.thinnest_diameter=38mm; hold.drive.outer_diameter=20mm",
    "THIN; hold.tail.kind=dead-cup",
    "SPINDLE; hold.method=cup-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
