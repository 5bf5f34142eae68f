"""A paper joint does not take blows."""

import pytest

from tests.rules.bench import fired

RULE = "paper-and-blows"
FIRES = [
    "BOWL; hold.method=paper-joint",
]
QUIET = [
    "BOWL; hold.method=paper-joint; work.state=round",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
