"""Two cups hold a ball."""

import pytest

from tests.rules.bench import fired

RULE = "cups-need-a-ball"
FIRES = [
    "BOWL; hold.method=sphere-cups",
]
QUIET = [
    "BALL",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
