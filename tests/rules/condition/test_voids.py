"""A void leaves less wood in the hold than it looks."""

import pytest

from tests.rules.bench import fired

RULE = "voids"
FIRES = [
    "BOWL; work.condition=[void]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[knot]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
