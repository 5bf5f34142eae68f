"""A pin needs depth."""

import pytest

from tests.rules.bench import fired

RULE = "thin-for-a-pin"
FIRES = [
    "DISC@pin-chuck",
    "BOWL; hold.method=pin-chuck; work.length=25mm",
]
QUIET = [
    "BOWL@pin-chuck",
    "BOWL; hold.method=pin-chuck; work.length=50mm",
    "DISC@screw-chuck",
    "DISC@pin-chuck; work.length=30mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
