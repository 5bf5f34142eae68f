"""Rubber buttons cannot grip a natural edge."""

import pytest

from tests.rules.bench import fired

RULE = "buttons-on-a-natural-edge"
FIRES = [
    "BOWL; hold.method=rubber-button-jaws; work.state=finished; work.condition=[live-edge]",
]
QUIET = [
    "BOWL; hold.method=rubber-button-jaws; work.state=finished",
    "BOWL; work.state=finished; work.condition=[live-edge]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
