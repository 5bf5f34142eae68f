"""What holds a bowl while its outside is shaped."""

import pytest

from tests.rules.bench import fired

RULE = "bowl-outside"
FIRES = [
    "BOWL; work.state=round",
    "BOWL; work.state=round; work.length=2in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.state=round; work.grain=along",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
