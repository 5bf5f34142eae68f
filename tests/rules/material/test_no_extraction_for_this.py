"""Some dusts are not raised without extraction."""

import pytest

from tests.rules.bench import fired

RULE = "no-extraction-for-this"
FIRES = [
    "PLASTIC; work.material=canvas phenolic; person.extraction=no",
    "PLASTIC; work.material=glass epoxy; person.extraction=no; person.respirator=P3",
]
QUIET = [
    "PLASTIC; person.extraction=no",
    "PLASTIC; work.material=canvas phenolic",
    "PLASTIC; work.material=canvas phenolic; person.extraction=",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
