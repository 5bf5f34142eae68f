"""Eyes come first."""

import pytest

from tests.rules.bench import fired

RULE = "eyes"
FIRES = [
    "SPINDLE",
    "BOWL",
    "PLASTIC",
    "STONE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)
