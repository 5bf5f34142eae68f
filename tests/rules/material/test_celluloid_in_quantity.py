"""Celluloid only in small stock."""

import pytest

from tests.rules.bench import fired

RULE = "celluloid-in-quantity"
FIRES = [
    "PLASTIC; work.material=celluloid; work.diameter=60mm; machine.extinguisher=water",
    "PLASTIC; work.material=celluloid; machine.extinguisher=water; work.diameter=50mm",
]
QUIET = [
    "PLASTIC; work.diameter=60mm",
    "PLASTIC; work.material=celluloid; work.diameter=20mm; machine.extinguisher=water",
    "PLASTIC; work.material=celluloid; machine.extinguisher=water",
    "PLASTIC; work.diameter=60mm; machine.extinguisher=water; work.material=mdf",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
