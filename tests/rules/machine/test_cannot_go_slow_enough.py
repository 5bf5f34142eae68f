"""A lathe whose lowest speed is over the ceiling cannot turn this."""

import pytest

from tests.rules.bench import fired

RULE = "cannot-go-slow-enough"
FIRES = [
    "BOWL; machine.min_rpm=900",
    "BOWL; machine.min_rpm=900; work.diameter=8in",
]
QUIET = [
    "BOWL",
    "BOWL; machine.min_rpm=100",
    "SPINDLE",
    "BOWL; machine.min_rpm=900; work.diameter=6.5in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
