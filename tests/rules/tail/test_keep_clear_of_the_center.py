"""The tool stops short of the center."""

import pytest

from tests.rules.bench import fired

RULE = "keep-clear-of-the-center"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]
QUIET = [
    "BOWL; machine.tailstock=no; hold.method=jaws-on-tenon",
    "HOLLOW",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
