"""Old paint may be lead."""

import pytest

from tests.rules.bench import fired

RULE = "painted-wood"
FIRES = [
    "SPINDLE; work.condition=[painted]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.condition=[oily]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
