"""A name that fits several woods gets the worst of them."""

import pytest

from tests.rules.bench import fired

RULE = "name-fits-several-woods"
FIRES = [
    "SPINDLE; work.material=maple",
    "BOWL; work.material=cedar",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.material=unknown",
    "PLASTIC; work.material=plastic",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
