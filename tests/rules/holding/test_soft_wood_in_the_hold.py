"""No hold is better than the wood in it."""

import pytest

from tests.rules.bench import fired

RULE = "soft-wood-in-the-hold"
FIRES = [
    "BOWL; hold.method=faceplate-screws; work.condition=[spalted]",
    "BOWL; work.condition=[spalted]; hold.method=jaws-on-tenon",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws",
    "SPINDLE",
    "BOWL; work.condition=[spalted]; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
