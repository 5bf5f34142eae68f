"""Serrated jaws on wet side grain ask for care."""

import pytest

from tests.rules.bench import fired

RULE = "long-jaws-on-wet-side-grain"
FIRES = [
    "BOWL; hold.method=long-jaws; work.moisture=green",
]
QUIET = [
    "BOWL; hold.method=long-jaws",
    "HOLLOW; hold.method=long-jaws",
    "BOWL; work.moisture=green; hold.method=jaws-on-tenon",
    "BOWL; hold.method=long-jaws; work.moisture=green; work.grain=along",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
