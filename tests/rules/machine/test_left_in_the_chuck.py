"""Work left in the chuck loosens by itself."""

import pytest

from tests.rules.bench import fired

RULE = "left-in-the-chuck"
FIRES = [
    "BOWL; hold.left_mounted=12h",
    "BOWL; hold.left_mounted=1.25h",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; hold.left_mounted=0.2h",
    "BOWL; hold.left_mounted=1h",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
