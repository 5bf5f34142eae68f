"""Teeth that only lean on the wood need thrust nobody should wind."""

import pytest

from tests.rules.bench import fired

RULE = "seat-the-teeth"
FIRES = [
    "SPINDLE",
    "SPINDLE; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE; hold.drive.seated_depth=4mm",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
