"""A pin drive is for tiny work."""

import pytest

from tests.rules.bench import fired

RULE = "pin-drive-for-small-ends"
FIRES = [
    "SPINDLE; hold.method=point-and-pin-drive",
]
QUIET = [
    "SPINDLE; hold.method=point-and-pin-drive; work.diameter=20mm",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
