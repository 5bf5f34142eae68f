"""Tall work peels off its block."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-a-glue-block"
FIRES = [
    "SPINDLE; hold.method=glue-block",
]
QUIET = [
    "BOWL; hold.method=glue-block",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
