"""Two spurs split a small end."""

import pytest

from tests.rules.bench import fired

RULE = "two-spurs-in-a-small-end"
FIRES = [
    "SPINDLE; hold.method=two-spur-drive; work.diameter=1.5in",
]
QUIET = [
    "SPINDLE; hold.method=two-spur-drive",
    "BOWL; hold.method=two-spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
