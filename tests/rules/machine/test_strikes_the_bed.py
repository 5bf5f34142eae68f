"""A blank wider than the swing strikes the bed."""

import pytest

from tests.rules.bench import fired

RULE = "strikes-the-bed"
FIRES = [
    "BOWL; machine.swing=9in",
]
QUIET = [
    "BOWL",
    "BOWL; machine.swing=12in",
    "SPINDLE",
    "BOWL; machine.swing=10in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
