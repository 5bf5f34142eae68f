"""What touches food or a child's mouth is a question of its own."""

import pytest

from tests.rules.bench import fired

RULE = "food-and-toys"
FIRES = [
    "SPINDLE; work.use=food",
    "SPINDLE; work.use=toy",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.use=other",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
