"""A recess does not hold a blank that still hammers."""

import pytest

from tests.rules.bench import fired

RULE = "recess-in-a-lopsided-blank"
FIRES = [
    "BOWL; hold.method=jaws-in-recess",
]
QUIET = [
    "PLATTER",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
