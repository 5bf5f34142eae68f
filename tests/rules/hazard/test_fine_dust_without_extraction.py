"""Fine dust stays in the room."""

import pytest

from tests.rules.bench import fired

RULE = "fine-dust-without-extraction"
FIRES = [
    "STONE; work.material=bone; work.raw=no; person.extraction=no",
    "SPINDLE; work.condition=[spalted]; person.extraction=no",
]
QUIET = [
    "STONE; work.material=bone; work.raw=no",
    "SPINDLE; person.extraction=no",
    "PLASTIC; person.extraction=no",
    "STONE; work.raw=no; person.extraction=no; work.material=mdf",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
