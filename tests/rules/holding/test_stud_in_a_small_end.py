"""A small end bursts round a stud."""

import pytest

from tests.rules.bench import fired

RULE = "stud-in-a-small-end"
FIRES = [
    "STONE; hold.method=keyed-stud; work.diameter=25mm",
    "STONE; hold.method=keyed-stud; work.diameter=29mm",
]
QUIET = [
    "STONE; hold.method=keyed-stud",
    "STONE; hold.method=keyed-stud; work.diameter=30mm",
    "STONE; work.diameter=25mm; hold.kit=[glue-block]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
