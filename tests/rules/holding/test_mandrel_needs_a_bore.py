"""A mandrel goes through a bore."""

import pytest

from tests.rules.bench import fired

RULE = "mandrel-needs-a-bore"
FIRES = [
    "SPINDLE; hold.method=mandrel",
]
QUIET = [
    "PEN",
    "SPINDLE",
    "PEN; work.form=ring",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
