"""What holds a dry side-grain blank over 10 in."""

import pytest

from tests.rules.bench import fired

RULE = "large-dry-blank"
FIRES = [
    "BOWL; work.diameter=12in; work.length=2in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.diameter=12in; work.length=2in; work.grain=along",
    "BOWL; work.diameter=12in; work.length=2in; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
