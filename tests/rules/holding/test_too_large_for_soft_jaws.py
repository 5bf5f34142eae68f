"""Soft jaws are bored for work to 150 mm."""

import pytest

from tests.rules.bench import fired

RULE = "too-large-for-soft-jaws"
FIRES = [
    "BOWL; hold.method=soft-jaws",
    "BOWL; hold.method=soft-jaws; work.diameter=7in",
]
QUIET = [
    "SPINDLE",
    "ROD; work.diameter=10mm; hold.method=soft-jaws",
    "BOWL; hold.method=soft-jaws; work.diameter=150mm",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
