"""Burning magnesium is fed by water and by most powders."""

import pytest

from tests.rules.bench import fired

RULE = "magnesium-without-class-d"
FIRES = [
    "PLASTIC; work.material=magnesium; machine.extinguisher=none",
    "PLASTIC; work.material=magnesium; machine.extinguisher=water",
    "PLASTIC; work.material=magnesium; machine.extinguisher=powder",
]
QUIET = [
    "PLASTIC; machine.extinguisher=none",
    "PLASTIC; work.material=magnesium; machine.extinguisher=class-D",
    "PLASTIC; work.material=titanium; machine.extinguisher=none",
    "PLASTIC; machine.extinguisher=none; work.material=celluloid",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
