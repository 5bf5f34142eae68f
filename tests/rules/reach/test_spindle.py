"""What holds an ordinary spindle."""

import pytest

from tests.rules.bench import fired

RULE = "spindle"
FIRES = [
    "SPINDLE",
    "SPINDLE; work.grain=diagonal",
    "SPINDLE; work.grain=none",
    "SPINDLE; work.diameter=1.2in",
]
QUIET = [
    "SPINDLE; work.diameter=20mm",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
