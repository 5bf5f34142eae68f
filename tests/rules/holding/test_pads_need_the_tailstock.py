"""A pad or cup drives only while the tail presses."""

import pytest

from tests.rules.bench import fired

RULE = "pads-need-the-tailstock"
FIRES = [
    "BALL@sphere-cups; machine.tailstock=no",
    "PLATTER@friction-block; machine.tailstock=no",
    "BALL@sphere-cups; hold.tail.kind=none",
]
QUIET = [
    "BALL",
    "PLATTER@friction-block",
    "SPINDLE@spur-drive; machine.tailstock=no",
    "BALL@jam-chuck; machine.tailstock=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
