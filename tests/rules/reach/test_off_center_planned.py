"""What holds work that is meant to run off center."""

import pytest

from tests.rules.bench import fired

RULE = "off-center-planned"
FIRES = [
    "BOWL; hold.method=offset-faceplate",
]
QUIET = [
    "SPINDLE",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
