"""A wood tool grabs in metal."""

import pytest

from tests.rules.bench import fired

RULE = "hand-tools-on-metal"
FIRES = [
    "PLASTIC; work.material=brass; cut.tool=hand",
]
QUIET = [
    "PLASTIC; cut.tool=hand",
    "PLASTIC; work.material=brass; cut.tool=carriage",
    "SPINDLE; cut.tool=hand",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
