"""Some materials are asked about first."""

import pytest

from tests.rules.bench import fired

RULE = "ask-about-this-material"
FIRES = [
    "PLASTIC; work.material=magnesium",
    "PLASTIC; work.material=carbon fiber",
    "PLASTIC; work.material=unknown plastic",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "BOWL",
    "STONE",
    "STONE; work.material=soapstone",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
