"""A bored end sits on a cone."""

import pytest

from tests.rules.bench import fired

RULE = "cone-for-a-bore"
FIRES = [
    "PEN; hold.method=collet",
    "PEN; hold.method=jam-chuck",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "PEN",  # on a mandrel: the center is in the arbor
    "PEN; hold.method=collet; hold.tail.kind=live-cone",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
