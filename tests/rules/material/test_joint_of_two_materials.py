"""A tested joint still has two sides that move apart."""

import pytest

from tests.rules.bench import fired

RULE = "joint-of-two-materials"
FIRES = [
    "STONE; work.parts=[alabaster, brass]",
    "SPINDLE; work.parts=[sugar maple, black walnut]; work.tested=yes",
]
QUIET = [
    "STONE",
    "SPINDLE",
    "SPINDLE; work.parts=[sugar maple, black walnut]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
