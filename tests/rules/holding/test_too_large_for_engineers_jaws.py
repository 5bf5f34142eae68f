"""Engineers' jaws on large wood stand out too far."""

import pytest

from tests.rules.bench import fired

RULE = "too-large-for-engineers-jaws"
FIRES = [
    "BOWL; hold.method=four-jaw-independent",
    "BOWL; hold.method=three-jaw",
    "BOWL; hold.method=four-jaw-independent; work.diameter=7in",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "BOWL; hold.method=four-jaw-independent; work.diameter=150mm",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
