"""Teeth that are only pressed ask for far more."""

import pytest

from tests.rules.bench import fired

RULE = "teeth-only-pressed"
FIRES = [
    "SPINDLE; hold.method=spur-drive",
]
QUIET = [
    "NARROW",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=spur-drive; cut.operation=balancing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
