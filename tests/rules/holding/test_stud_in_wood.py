"""A cast or drilled stud is for resin and stone."""

import pytest

from tests.rules.bench import fired

RULE = "stud-in-wood"
FIRES = [
    "BOWL; hold.method=keyed-stud",
]
QUIET = [
    "STONE",
    "SPINDLE",
    "BOWL; hold.method=keyed-stud; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
