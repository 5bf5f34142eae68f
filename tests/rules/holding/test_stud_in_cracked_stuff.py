"""A stud levers a check open."""

import pytest

from tests.rules.bench import fired

RULE = "stud-in-cracked-stuff"
FIRES = [
    "STONE; hold.method=keyed-stud; work.condition=[check]",
    "STONE; hold.method=keyed-stud; work.condition=[crack]",
]
QUIET = [
    "STONE; hold.method=keyed-stud",
    "STONE; hold.method=keyed-stud; work.condition=[knot]",
    "STONE; work.condition=[check]; hold.kit=[glue-block]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
