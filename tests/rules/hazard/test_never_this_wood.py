"""Some woods are poison."""

import pytest

from tests.rules.bench import fired

RULE = "never-this-wood"
FIRES = [
    "SPINDLE; work.material=oleander",
    "BOWL; work.material=manchineel",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.material=yew",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
