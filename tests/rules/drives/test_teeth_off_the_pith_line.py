"""Four teeth stand off the pith and off every check."""

import pytest

from tests.rules.bench import fired

RULE = "teeth-off-the-pith-line"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "NARROW",
]
QUIET = [
    "BOWL; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
