"""A finished bottom wants a pad under the center."""

import pytest

from tests.rules.bench import fired

RULE = "pad-on-a-finished-bottom"
FIRES = [
    "BOWL; work.state=finished; hold.method=friction-block",
]
QUIET = [
    "BOWL; work.state=finished; hold.method=friction-block; hold.tail.kind=live-pad",
    "SPINDLE; hold.method=spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
