"""A joint of two materials is the weakest thing in the piece."""

import pytest

from tests.rules.bench import fired

RULE = "joint-not-tested"
FIRES = [
    "STONE; work.parts=[alabaster, brass]; work.tested=",
    "SPINDLE; work.parts=[sugar maple, black walnut]",
]
QUIET = [
    "STONE; work.parts=[alabaster, brass]",
    "SPINDLE",
    "PLASTIC; work.material=wood and resin; work.parts=[sugar maple, epoxy casting]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
