"""What holds a spalted or burly side-grain blank."""

import pytest

from tests.rules.bench import fired

RULE = "faulty-blank"
FIRES = [
    "BOWL; work.condition=[burl]",
    "BOWL; work.condition=[spalted]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.condition=[burl]; work.state=round",
    "BOWL; work.condition=[burl]; work.grain=along",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
