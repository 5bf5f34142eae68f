"""A paper joint is for low work."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-paper"
FIRES = [
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=5in",
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=1.8in",
]
QUIET = [
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=1in",
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=1.5in",
    "BOWL; work.diameter=6in; work.length=5in; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
