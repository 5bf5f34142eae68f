"""A pin in end grain splits it."""

import pytest

from tests.rules.bench import fired

RULE = "pin-in-end-grain"
FIRES = [
    "HOLLOW; hold.method=pin-chuck",
]
QUIET = [
    "BOWL; hold.method=pin-chuck",
    "HOLLOW; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
