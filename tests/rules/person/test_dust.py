"""Dust is the slow accident."""

import pytest

from tests.rules.bench import fired

RULE = "dust"
FIRES = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.material=mdf",
    "SPINDLE; work.material=coconut shell",
]
QUIET = [
    "BOWL; work.moisture=green",
    "PLASTIC",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
