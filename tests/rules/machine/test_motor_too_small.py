"""A cut the motor cannot pull stalls in the work."""

import pytest

from tests.rules.bench import fired

RULE = "motor-too-small"
FIRES = [
    "BOWL; machine.power=100W",
    "BOWL; machine.power=350W",
]
QUIET = [
    "BOWL",
    "BOWL; machine.power=1.5kW",
    "SPINDLE",
    "BOWL; machine.power=450W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
