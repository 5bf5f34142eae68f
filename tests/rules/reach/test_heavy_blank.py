"""What holds a heavy side-grain blank."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-blank"
FIRES = [
    "BOWL; work.mass=8kg",
    "BOWL; work.material=bubinga",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.mass=8kg; work.grain=along",
    "BOWL; work.mass=8kg; work.state=round",
    "BOWL; work.mass=5kg",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
