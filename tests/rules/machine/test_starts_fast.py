"""A lathe whose lowest speed is over the advised start begins too briskly."""

import pytest

from tests.rules.bench import fired

RULE = "starts-fast"
FIRES = [
    "BOWL; machine.min_rpm=320; machine.mass=400kg",
    "BOWL; machine.mass=400kg; machine.min_rpm=600",
]
QUIET = [
    "BOWL",
    "BOWL; machine.min_rpm=100",
    "BOWL; machine.min_rpm=900",
    "BOWL; machine.mass=400kg; machine.min_rpm=300",
    "BOWL; machine.min_rpm=320; machine.mass=400kg; work.diameter=19in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
