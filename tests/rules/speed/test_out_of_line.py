"""The blank leaves in its own plane."""

import pytest

from tests.rules.bench import fired

RULE = "out-of-line"
FIRES = [
    "SPINDLE",
    "BOWL",
]
QUIET = [
    "BOWL; cut.operation=balancing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
