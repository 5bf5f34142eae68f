"""Bark inside the wood is a plane with no strength."""

import pytest

from tests.rules.bench import fired

RULE = "bark-inside"
FIRES = [
    "BOWL; work.condition=[bark-inclusion]",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[live-edge]",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
