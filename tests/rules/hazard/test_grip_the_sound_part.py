"""Grip what is solid."""

import pytest

from tests.rules.bench import fired

RULE = "grip-the-sound-part"
FIRES = [
    "SPINDLE; work.material=woody seed pod",
]
QUIET = [
    "SPINDLE",
    "PLASTIC",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
