"""Thrust falls by a third and more in the first minute."""

import pytest

from tests.rules.bench import fired

RULE = "bedding-in"
FIRES = [
    "SPINDLE",
    "SPINDLE; hold.method=cup-drive",
]
QUIET = [
    "SPINDLE; hold.method=jaws-on-tenon",
    "BOWL; hold.method=faceplate-screws",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
