"""A paper joint is for small work."""

import pytest

from tests.rules.bench import fired

RULE = "large-on-paper"
FIRES = [
    "BOWL; hold.method=paper-joint; work.state=round",
    "BOWL; hold.method=paper-joint; work.state=round; work.diameter=9.5in",
]
QUIET = [
    "BOWL; hold.method=paper-joint; work.diameter=7in",
    "BOWL; work.state=round; hold.method=jaws-on-tenon",
    "BOWL; hold.method=paper-joint; work.diameter=200mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
