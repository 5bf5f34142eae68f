"""Asthma and a wood that sensitizes the lungs."""

import pytest

from tests.rules.bench import fired

RULE = "lungs-and-this-wood"
FIRES = [
    "SPINDLE; work.material=western redcedar; person.asthma=yes",
    "SPINDLE; work.material=cocobolo; person.asthma=yes",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; person.asthma=yes",
    "SPINDLE; work.material=western redcedar; person.asthma=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
