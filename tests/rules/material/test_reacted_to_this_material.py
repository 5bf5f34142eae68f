"""Who has reacted to a material reacts to less of it."""

import pytest

from tests.rules.bench import fired

RULE = "reacted-to-this-material"
FIRES = [
    "PLASTIC; work.material=epoxy casting; work.tested=yes; person.reacted_before=[epoxy casting]",
    "PLASTIC; work.material=urethane casting; work.tested=yes; person.reacted_before=[epoxy casting]",
    "STONE; person.reacted_before=[alabaster]",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; person.reacted_before=[epoxy casting]",
    "STONE; person.reacted_before=[bone]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
