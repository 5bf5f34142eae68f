"""A knot is a hard plug in soft wood."""

import pytest

from tests.rules.bench import fired

RULE = "knot-near-the-grip"
FIRES = [
    "SPINDLE; work.condition=[knot]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.condition=[oily]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
