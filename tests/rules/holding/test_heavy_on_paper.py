"""A paper joint is for light work."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-on-paper"
FIRES = [
    "BOWL; hold.method=paper-joint; work.diameter=7in; work.mass=3kg",
    "BOWL; hold.method=paper-joint; work.diameter=7in; work.mass=2.5kg",
]
QUIET = [
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=2in",
    "BOWL; hold.method=paper-joint; work.diameter=7in; work.mass=2kg",
    "BOWL; work.diameter=7in; work.mass=3kg; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
