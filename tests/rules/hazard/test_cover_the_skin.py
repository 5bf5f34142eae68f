"""Dust that the skin learns to hate."""

import pytest

from tests.rules.bench import fired

RULE = "cover-the-skin"
FIRES = [
    "PLASTIC; work.material=canvas phenolic",
    "PLASTIC; work.material=glass epoxy",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
