"""A wood known for its dust alone gets the worst strength."""

import pytest

from tests.rules.bench import fired

RULE = "known-for-its-dust-alone"
FIRES = [
    "SPINDLE; work.material=cocobolo",
    "SPINDLE; work.material=ebony",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=unknown",
    "PLASTIC",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
