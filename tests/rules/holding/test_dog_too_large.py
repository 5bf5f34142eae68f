"""A driving dog takes 6 to 75 mm."""

import pytest

from tests.rules.bench import fired

RULE = "dog-too-large"
FIRES = [
    "BOWL; hold.method=driving-dog",
    "BOWL; hold.method=driving-dog; work.diameter=3.5in",
]
QUIET = [
    "ROD; hold.method=driving-dog",
    "BOWL; hold.method=driving-dog; work.diameter=75mm",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
