"""Work between centers needs the tailstock."""

import pytest

from tests.rules.bench import fired

RULE = "centers-need-the-tailstock"
FIRES = [
    "SPINDLE; hold.method=spur-drive; machine.tailstock=no",
    "SPINDLE; hold.method=spur-drive; cut.operation=hollowing",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws; machine.tailstock=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
