"""What holds a green side-grain blank."""

import pytest

from tests.rules.bench import fired

RULE = "green-blank"
FIRES = [
    "BOWL; work.moisture=green",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.moisture=green; work.grain=along",
    "BOWL; work.moisture=green; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
