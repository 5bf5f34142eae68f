"""Unknown wood may sensitize, and its strength is a guess."""

import pytest

from tests.rules.bench import fired

RULE = "unknown-wood"
FIRES = [
    "BOWL; work.material=unknown",
    "BOWL; work.material=unknown; work.diameter=6in",
]
QUIET = [
    "BOWL",
    "SPINDLE; work.material=unknown",
    "BOWL; work.material=cocobolo",
    "BOWL; work.material=unknown; work.diameter=5.5in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
