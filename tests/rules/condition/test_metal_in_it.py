"""A nail in the wood breaks the edge and sparks."""

import pytest

from tests.rules.bench import fired

RULE = "metal-in-it"
FIRES = [
    "BOWL; work.condition=[nails]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[grit]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
