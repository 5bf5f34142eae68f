"""What holds a knob."""

import pytest

from tests.rules.bench import fired

RULE = "knob"
FIRES = [
    "KNOB",
    "KNOB; work.diameter=75mm",
    "KNOB; work.grain=diagonal",
    "KNOB; work.grain=none",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "KNOB; work.diameter=3in",
    "KNOB; work.purpose=spindle",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
