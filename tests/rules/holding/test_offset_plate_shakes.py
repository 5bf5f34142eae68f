"""An offset plate is out of balance by design."""

import pytest

from tests.rules.bench import fired

RULE = "offset-plate-shakes"
FIRES = [
    "BOWL; hold.method=offset-faceplate",
]
QUIET = [
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
