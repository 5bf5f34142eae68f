"""Dry wood with neither extraction nor mask."""

import pytest

from tests.rules.bench import fired

RULE = "wood-dust-and-nothing-against-it"
FIRES = [
    "SPINDLE; person.extraction=no; person.respirator=none",
    "SPINDLE; person.extraction=no; person.respirator=none; work.material=mdf",
    "SPINDLE; person.extraction=no; person.respirator=none; work.material=coconut shell",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; person.extraction=no",
    "BOWL; work.moisture=green; person.extraction=no; person.respirator=none",
    "SPINDLE; person.respirator=none",
    "SPINDLE; person.extraction=no; person.respirator=none; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
