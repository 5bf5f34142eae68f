"""A pin drive is for tiny work."""

import pytest

from tests.rules.bench import fired

RULE = "pin-drive-for-small-ends"
FIRES = [
    "SPINDLE; hold.method=point-and-pin-drive",
    "SPINDLE; hold.method=point-and-pin-drive; work.diameter=1.3in",
]
QUIET = [
    "SPINDLE; hold.method=point-and-pin-drive; work.diameter=20mm",
    "SPINDLE",
    "SPINDLE; hold.method=point-and-pin-drive; work.diameter=20mm; work.form=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
