"""Some dusts need extraction: is there any?"""

import pytest

from tests.rules.bench import fired

RULE = "extraction-must-be-stated"
FIRES = [
    "PLASTIC; work.material=canvas phenolic; person.extraction=",
    "PLASTIC; work.material=mdf; person.extraction=",
]
QUIET = [
    "PLASTIC; person.extraction=",
    "PLASTIC; work.material=canvas phenolic",
    "PLASTIC; work.material=canvas phenolic; person.extraction=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
