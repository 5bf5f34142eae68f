"""Green wood shrinks out of its hold."""

import pytest

from tests.rules.bench import fired

RULE = "green-moves"
FIRES = [
    "BOWL; work.moisture=green",
]
QUIET = [
    "BOWL",
    "BOWL; work.moisture=frozen",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
