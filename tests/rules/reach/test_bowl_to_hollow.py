"""What holds a bowl while it is hollowed."""

import pytest

from tests.rules.bench import fired

RULE = "bowl-to-hollow"
FIRES = [
    "BOWL; work.state=round; cut.operation=hollowing",
    "BOWL; cut.operation=hollowing; work.state=finished",
    "BOWL; work.state=round; cut.operation=hollowing; work.length=2in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.state=round",
    "BOWL; work.state=round; cut.operation=hollowing; work.grain=along",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
