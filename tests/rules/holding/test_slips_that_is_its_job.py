"""A drive meant to slip needs light cuts."""

import pytest

from tests.rules.bench import fired

RULE = "slips-that-is-its-job"
FIRES = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=mandrel",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; hold.method=sphere-cups",
    "SPINDLE; hold.method=toothed-ring-drive; work.material=iroko",
    "SPINDLE; hold.method=screw-chuck",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
