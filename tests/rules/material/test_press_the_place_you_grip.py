"""Palm is hard outside and soft within."""

import pytest

from tests.rules.bench import fired

RULE = "press-the-place-you-grip"
FIRES = [
    "SPINDLE; work.material=palm wood",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=palm wood; work.condition=[sound]",
    "PLASTIC",
    "SPINDLE; work.material=palm wood; work.condition=[punky]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
