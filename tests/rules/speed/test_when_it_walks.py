"""When the lathe walks or rocks, the switch is the only tool."""

import pytest

from tests.rules.bench import fired

RULE = "when-it-walks"
FIRES = [
    "BOWL",
    "BOWL; work.offset=12mm",
    "BOWL; work.diameter=4.5in",
]
QUIET = [
    "SPINDLE",
    "BOWL; work.state=round",
    "BOWL; work.offset=0.2mm; machine.mass=900kg",
    "BOWL; work.diameter=3in",
    "BOWL; work.offset=12mm; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
