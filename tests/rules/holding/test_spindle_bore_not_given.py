"""Nobody said how wide the spindle bore is."""

import pytest

from tests.rules.bench import fired

RULE = "spindle-bore-not-given"
FIRES = [
    "ROD@through-spindle",
    "ROD; hold.method=through-spindle",
]
QUIET = [
    "ROD@through-spindle; machine.spindle_bore=30mm",
    "ROD; hold.method=through-spindle; machine.spindle_bore=20mm",
    "ROD@collet",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
