"""Ring shake parts the wood along a growth ring."""

import pytest

from tests.rules.bench import fired

RULE = "ring-shaken"
FIRES = [
    "SPINDLE; work.condition=[ring-shake]",
    "BOWL; work.condition=[ring-shake]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.condition=[check]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
