"""A paper joint is for low work."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-paper"
FIRES = [
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=5in",
]
QUIET = [
    "BOWL; hold.method=paper-joint; work.diameter=6in; work.length=1in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
