"""A tool that rubs lights magnesium."""

import pytest

from tests.rules.bench import fired

RULE = "rubbing-lights-it"
FIRES = [
    "PLASTIC; work.material=magnesium; machine.extinguisher=class-D; cut.tool=carriage; cut.feed=0.05mm/rev",
    "PLASTIC; work.material=magnesium; machine.extinguisher=class-D; cut.tool=carriage; cut.feed=0.08mm/rev",
]
QUIET = [
    "PLASTIC; work.material=magnesium; machine.extinguisher=class-D; cut.tool=carriage; cut.feed=0.15mm/rev",
    "PLASTIC; cut.tool=carriage; cut.feed=0.05mm/rev",
    "PLASTIC; work.material=magnesium; machine.extinguisher=class-D; cut.tool=carriage; cut.feed=0.1mm/rev",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
