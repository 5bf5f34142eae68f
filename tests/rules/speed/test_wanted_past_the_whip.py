"""Nobody runs a long bar through its whip to the quiet beyond."""

import pytest

from tests.rules.bench import fired

RULE = "wanted-past-the-whip"
FIRES = [
    "NARROW; cut.wanted_rpm=3500",
    "NARROW; cut.wanted_rpm=7000",
    "NARROW; cut.wanted_rpm=3200",
]
QUIET = [
    "NARROW; cut.wanted_rpm=1500",
    "NARROW",
    "BOWL; cut.wanted_rpm=3000",
    "NARROW; cut.wanted_rpm=2600",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
