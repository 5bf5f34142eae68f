"""A square socket takes sides to 55 mm."""

import pytest

from tests.rules.bench import fired

RULE = "socket-too-small"
FIRES = [
    "SPINDLE; hold.method=square-socket-drive; work.diameter=4in",
    "SPINDLE; hold.method=square-socket-drive; work.diameter=3.8in",
]
QUIET = [
    "SPINDLE; hold.method=square-socket-drive; work.diameter=2in",
    "SPINDLE; hold.method=square-socket-drive",
    "SPINDLE; work.diameter=4in; hold.method=jaws-on-tenon",
    "ROD; work.diameter=55mm; hold.method=square-socket-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
