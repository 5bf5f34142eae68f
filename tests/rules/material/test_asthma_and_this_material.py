"""Asthma and a dust that sensitizes the lungs."""

import pytest

from tests.rules.bench import fired

RULE = "asthma-and-this-material"
FIRES = [
    "PLASTIC; work.material=canvas phenolic; person.asthma=yes",
    "STONE; work.material=shell; person.asthma=yes",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; person.asthma=yes",
    "PLASTIC; work.material=canvas phenolic",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
