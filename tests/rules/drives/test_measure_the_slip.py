"""What a drive carries is known to a factor of two."""

import pytest

from tests.rules.bench import fired

RULE = "measure-the-slip"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=cup-drive",
    "SPINDLE; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive; hold.slip_test.torque=5Nm; hold.slip_test.thrust=1kN",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=sphere-cups",
    "SPINDLE; hold.method=toothed-ring-drive; hold.tail.kind=dead-cup",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
