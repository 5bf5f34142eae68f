"""A P2 mask lets the finest through."""

import pytest

from tests.rules.bench import fired

RULE = "mask-too-coarse"
FIRES = [
    "PLASTIC; work.material=canvas phenolic",
    "SPINDLE; work.condition=[spalted]",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "PLASTIC; work.material=canvas phenolic; person.respirator=P3",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
