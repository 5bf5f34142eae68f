"""Work above 18 in carries enough to kill."""

import pytest

from tests.rules.bench import fired

RULE = "wide-work"
FIRES = [
    "BOWL; work.diameter=20in; machine.swing=30in; machine.min_rpm=50; machine.mass=900kg",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.diameter=20in",
    "BOWL; machine.swing=30in; machine.min_rpm=50; machine.mass=900kg; work.diameter=18in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
