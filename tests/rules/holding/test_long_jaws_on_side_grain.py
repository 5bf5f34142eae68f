"""Serrated jaws on dry side grain crush and let go."""

import pytest

from tests.rules.bench import fired

RULE = "long-jaws-on-side-grain"
FIRES = [
    "BOWL; hold.method=long-jaws",
]
QUIET = [
    "HOLLOW; hold.method=long-jaws",
    "BOWL; hold.method=long-jaws; work.moisture=green",
    "BOWL; hold.method=jaws-on-tenon",
    "BOWL; hold.method=long-jaws; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
