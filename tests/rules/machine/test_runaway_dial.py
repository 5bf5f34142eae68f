"""A dial that can pass any safe rim speed will one day be found there."""

import pytest

from tests.rules.bench import fired

RULE = "runaway-dial"
FIRES = [
    "BOWL; machine.max_rpm=3000",
    "BOWL; machine.max_rpm=1600",
]
QUIET = [
    "BOWL",
    "BOWL; machine.max_rpm=900",
    "SPINDLE",
    "BOWL; machine.max_rpm=1300",
    "BOWL; machine.max_rpm=1350",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
