"""What holds a box or hollow form to be hollowed."""

import pytest

from tests.rules.bench import fired

RULE = "box-to-hollow"
FIRES = [
    "HOLLOW",
    "HOLLOW; work.grain=diagonal",
    "HOLLOW; work.grain=none",
    "HOLLOW; work.purpose=box",
    "HOLLOW; hold.method=jam-chuck; work.state=finished",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "HOLLOW; work.purpose=spindle",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
