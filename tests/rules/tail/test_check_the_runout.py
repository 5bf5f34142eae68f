"""A tail center that wobbles walks the work out."""

import pytest

from tests.rules.bench import fired

RULE = "check-the-runout"
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
