"""A pin in a cracked hole lets go."""

import pytest

from tests.rules.bench import fired

RULE = "pin-in-cracked-wood"
FIRES = [
    "BOWL; hold.method=pin-chuck; work.condition=[check]",
]
QUIET = [
    "BOWL; hold.method=pin-chuck",
    "BOWL; work.condition=[check]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
