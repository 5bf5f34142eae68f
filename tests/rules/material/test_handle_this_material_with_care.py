"""Materials other than wood have their own way of failing."""

import pytest

from tests.rules.bench import fired

RULE = "handle-this-material-with-care"
FIRES = [
    "PLASTIC",
    "STONE",
    "PLASTIC; work.material=canvas phenolic",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "PLASTIC; work.material=acetal",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
