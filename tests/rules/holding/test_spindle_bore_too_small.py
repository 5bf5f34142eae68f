"""What does not go through the bore cannot be held through it."""

import pytest

from tests.rules.bench import fired

RULE = "spindle-bore-too-small"
FIRES = [
    "ROD; hold.method=through-spindle; machine.spindle_bore=20mm",
]
QUIET = [
    "ROD; hold.method=through-spindle; machine.spindle_bore=30mm",
    "ROD; machine.spindle_bore=20mm; hold.method=jaws-on-tenon",
    "ROD; hold.method=through-spindle; machine.spindle_bore=25mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
