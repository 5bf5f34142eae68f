"""Wood screws and spurs do not hold in plastic, laminate, resin, stone or horn."""

import pytest

from tests.rules.bench import fired

RULE = "screws-in-the-wrong-stuff"
FIRES = [
    "PLASTIC; hold.method=spur-drive",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
