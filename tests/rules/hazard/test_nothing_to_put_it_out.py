"""A shop full of dust and nothing to put a fire out."""

import pytest

from tests.rules.bench import fired

RULE = "nothing-to-put-it-out"
FIRES = [
    "SPINDLE; machine.extinguisher=none",
    "PLASTIC; machine.extinguisher=none",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; machine.extinguisher=water",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
