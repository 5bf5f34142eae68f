"""A crack over more than a third of the section leaves too little wood to hold."""

import pytest

from tests.rules.bench import fired

RULE = "cracked-over-a-third"
FIRES = [
    "BOWL; work.condition=[crack]; work.crack.across=120mm",
    "BOWL; work.condition=[crack]; work.crack.across=100mm",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[crack]; work.crack.across=40mm",
    "BOWL; work.condition=[check]",
    "BOWL; work.condition=[crack]; work.crack.across=80mm",
    "BOWL; work.diameter=300mm; work.condition=[crack]; work.crack.across=100mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
