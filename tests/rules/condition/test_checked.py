"""End checks open under a wedge and under speed."""

import pytest

from tests.rules.bench import fired

RULE = "checked"
FIRES = [
    "SPINDLE; work.condition=[check]",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.condition=[knot]",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
