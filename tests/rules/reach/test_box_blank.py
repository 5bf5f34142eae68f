"""What holds a blank for a box or hollow form."""

import pytest

from tests.rules.bench import fired

RULE = "box-blank"
FIRES = [
    "HOLLOW; work.state=not-round",
    "SPINDLE; work.purpose=box",
    "HOLLOW; work.state=not-round; work.grain=diagonal",
    "HOLLOW; work.state=not-round; work.grain=none",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "HOLLOW",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
