"""The hold is good enough with care."""

import pytest

from tests.rules.bench import fired

RULE = "hold-with-care"
FIRES = [
    "PLATTER; work.state=round",
]
QUIET = [
    "SPINDLE; work.state=round",
    "BOWL; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
