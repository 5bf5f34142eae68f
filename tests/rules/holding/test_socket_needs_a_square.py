"""A square socket holds only squares."""

import pytest

from tests.rules.bench import fired

RULE = "socket-needs-a-square"
FIRES = [
    "ROD; hold.method=square-socket-drive",
]
QUIET = [
    "SPINDLE; hold.method=square-socket-drive",
    "ROD; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
