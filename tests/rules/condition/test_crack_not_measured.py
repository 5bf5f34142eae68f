"""A crack that nobody measured may be any size."""

import pytest

from tests.rules.bench import fired

RULE = "crack-not-measured"
FIRES = [
    "BOWL; work.condition=[crack]",
    "SPINDLE; work.crack.along=10mm",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[crack]; work.crack.across=20mm",
    "SPINDLE; work.condition=[check]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
