"""What to set, by feel."""

import pytest

from tests.rules.bench import fired

RULE = "set-by-feel"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=spur-drive; cut.force=50N",
]
QUIET = [
    "THIN",
    "SPINDLE; machine.handwheel_lead=4mm",
    "BOWL; machine.tailstock=no; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=spur-drive; cut.force=250N",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
