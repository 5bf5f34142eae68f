"""A drive as wide as the end splits its corners off."""

import pytest

from tests.rules.bench import fired

RULE = "drive-wider-than-the-end"
FIRES = [
    "NARROW",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; hold.method=cup-drive",
    "NARROW; work.diameter=30mm",
    "NARROW; work.diameter=20mm; hold.drive.outer_diameter=17mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
