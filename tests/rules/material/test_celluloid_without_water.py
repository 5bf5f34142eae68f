"""Celluloid burns under its own oxygen."""

import pytest

from tests.rules.bench import fired

RULE = "celluloid-without-water"
FIRES = [
    "PLASTIC; work.material=celluloid; machine.extinguisher=none",
    "PLASTIC; work.material=celluloid; machine.extinguisher=powder",
    "PLASTIC; work.material=celluloid; machine.extinguisher=class-D",
]
QUIET = [
    "PLASTIC; machine.extinguisher=none",
    "PLASTIC; work.material=celluloid; machine.extinguisher=water",
    "PLASTIC; work.material=celluloid; machine.extinguisher=powder; cut.cooling=wet",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
