"""A thin piece has no depth for a stud."""

import pytest

from tests.rules.bench import fired

RULE = "stud-in-a-thin-piece"
FIRES = [
    "STONE; hold.method=keyed-stud; work.length=20mm",
    "STONE; hold.method=keyed-stud; work.length=29mm",
]
QUIET = [
    "STONE; hold.method=keyed-stud",
    "STONE; hold.method=keyed-stud; work.length=30mm",
    "STONE; work.length=20mm; hold.kit=[glue-block]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
