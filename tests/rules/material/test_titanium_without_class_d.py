"""Fine titanium chips burn like magnesium."""

import pytest

from tests.rules.bench import fired

RULE = "titanium-without-class-d"
FIRES = [
    "PLASTIC; work.material=titanium; machine.extinguisher=powder",
    "PLASTIC; work.material=titanium; machine.extinguisher=none",
    "PLASTIC; work.material=titanium; machine.extinguisher=water",
]
QUIET = [
    "PLASTIC; machine.extinguisher=powder",
    "PLASTIC; work.material=titanium; machine.extinguisher=class-D",
    "PLASTIC; work.material=magnesium; machine.extinguisher=powder",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
