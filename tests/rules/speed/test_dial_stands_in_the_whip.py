"""A dial left where the bar whips."""

import pytest

from tests.rules.bench import fired

RULE = "dial-stands-in-the-whip"
FIRES = [
    "NARROW; machine.rpm_set=4000",
    "NARROW; machine.rpm_set=3200",
    "NARROW; machine.rpm_set=5000",
]
QUIET = [
    "NARROW; machine.rpm_set=1000",
    "NARROW",
    "BOWL; machine.rpm_set=4000",
    "NARROW; machine.rpm_set=6000",
    "NARROW; machine.rpm_set=2600",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
