"""What holds a ball."""

import pytest

from tests.rules.bench import fired

RULE = "ball"
FIRES = [
    "BALL",
    "BALL; work.state=finished",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BALL; work.form=round",
    "BALL; work.state=not-round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
