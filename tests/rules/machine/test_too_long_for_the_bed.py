"""Work longer than the bed cannot be supported."""

import pytest

from tests.rules.bench import fired

RULE = "too-long-for-the-bed"
FIRES = [
    "SPINDLE; machine.between_centers=10in",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; machine.between_centers=20in",
    "BOWL",
    "SPINDLE; machine.between_centers=12in",
    "SPINDLE; machine.between_centers=10in; cut.operation=hollowing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
