"""A crack that runs right through lets the piece come apart on the lathe."""

import pytest

from tests.rules.bench import fired

RULE = "cracked-through"
FIRES = [
    "SPINDLE; work.condition=[through-crack]",
    "BOWL; work.condition=[through-crack]",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.condition=[check]",
    "BOWL; work.condition=[crack]; work.crack.across=30mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
