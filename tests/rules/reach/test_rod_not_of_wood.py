"""What holds a rod that is not wood."""

import pytest

from tests.rules.bench import fired

RULE = "rod-not-of-wood"
FIRES = [
    "PLASTIC",
    "PLASTIC; work.material=aluminum",
    "PLASTIC; work.material=mdf",
    "PLASTIC; work.material=canvas phenolic",
    "PLASTIC; work.material=coconut shell",
    "PLASTIC; work.material=mystery",
    "PLASTIC; work.length=14mm",
    "PLASTIC; work.diameter=100mm; work.length=30mm",
    "PLASTIC; work.material=soap",
]
QUIET = [
    "SPINDLE",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
