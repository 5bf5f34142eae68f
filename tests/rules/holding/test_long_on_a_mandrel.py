"""A slim mandrel whips over 150 mm."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-a-mandrel"
FIRES = [
    "PEN; work.length=200mm",
    "PEN; work.length=180mm",
]
QUIET = [
    "PEN",
    "SPINDLE",
    "PEN; work.length=150mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
