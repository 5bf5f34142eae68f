"""Glued pieces are as strong as the poorest joint."""

import pytest

from tests.rules.bench import fired

RULE = "glued-up"
FIRES = [
    "BOWL; work.condition=[glued-joint]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[knot]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
