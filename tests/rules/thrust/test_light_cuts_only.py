"""Only light cuts fit under the limits."""

import pytest

from tests.rules.bench import fired

RULE = "light-cuts-only"
FIRES = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=friction-block",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "THIN",
    "SPINDLE; hold.method=cup-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
