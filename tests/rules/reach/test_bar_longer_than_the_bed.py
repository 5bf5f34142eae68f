"""What holds a bar too long for the bed that goes through the bore."""

import pytest

from tests.rules.bench import fired

RULE = "bar-longer-than-the-bed"
FIRES = [
    "ROD; work.length=900mm; machine.spindle_bore=40mm; machine.between_centers=500mm",
    "ROD; work.length=900mm; machine.between_centers=500mm; machine.spindle_bore=25mm",
    "ROD; work.length=550mm; machine.between_centers=500mm; machine.spindle_bore=40mm",
]
QUIET = [
    "SPINDLE",
    "ROD",
    "SPINDLE; machine.spindle_bore=80mm",
    "ROD; work.length=900mm; machine.between_centers=500mm; machine.spindle_bore=24mm",
    "ROD; work.length=500mm; machine.between_centers=500mm; machine.spindle_bore=40mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
