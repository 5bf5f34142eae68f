"""The wanted speed is past the ceiling."""

import pytest

from tests.rules.bench import fired

RULE = "wanted-too-fast"
FIRES = [
    "BOWL; cut.wanted_rpm=1500",
    "BOWL; cut.wanted_rpm=700",
]
QUIET = [
    "BOWL",
    "BOWL; cut.wanted_rpm=100",
    "SPINDLE",
    "BOWL; cut.wanted_rpm=550",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
