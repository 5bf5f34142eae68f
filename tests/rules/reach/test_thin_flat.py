"""What holds a thin flat disc of wood."""

import pytest

from tests.rules.bench import fired

RULE = "thin-flat"
FIRES = [
    "DISC",
    "DISC; work.length=20mm",
    "DISC; work.diameter=200mm",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "DISC; work.length=22mm",
    "DISC; work.diameter=220mm",
    "DISC; work.purpose=bowl",
    "DISC; work.grain=along",
    "DISC; work.purpose=platter",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
