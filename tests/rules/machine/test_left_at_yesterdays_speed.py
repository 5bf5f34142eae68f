"""A speed left set over the ceiling is a trap at the switch."""

import pytest

from tests.rules.bench import fired

RULE = "left-at-yesterdays-speed"
FIRES = [
    "BOWL; machine.rpm_set=1500",
    "BOWL; machine.rpm_set=700",
]
QUIET = [
    "BOWL",
    "BOWL; machine.rpm_set=100",
    "SPINDLE",
    "BOWL; machine.rpm_set=550",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
