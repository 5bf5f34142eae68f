"""Between too little and too much thrust there is little room."""

import pytest

from tests.rules.bench import fired

RULE = "narrow-window"
FIRES = [
    "NARROW",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "THIN",
    "NARROW; work.diameter=30mm",
    "NARROW; work.diameter=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
