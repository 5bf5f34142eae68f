"""Work above 20 kg carries enough to kill."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-work"
FIRES = [
    "BOWL; work.mass=25kg; machine.swing=30in; machine.min_rpm=50; machine.mass=900kg",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.mass=25kg",
    "BOWL; machine.swing=30in; machine.min_rpm=50; machine.mass=900kg; work.mass=20kg",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
