"""Water feeds a metal fire."""

import pytest

from tests.rules.bench import fired

RULE = "water-on-burning-metal"
FIRES = [
    "PLASTIC; work.material=aluminum; machine.extinguisher=water",
]
QUIET = [
    "PLASTIC; machine.extinguisher=water",
    "PLASTIC; work.material=aluminum",
    "PLASTIC; work.material=brass; machine.extinguisher=water",
    "PLASTIC; machine.extinguisher=water; work.material=mdf",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
