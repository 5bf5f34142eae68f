"""Milk plastic and fiber swell in coolant."""

import pytest

from tests.rules.bench import fired

RULE = "wet-coolant-on-it"
FIRES = [
    "PLASTIC; work.material=casein; cut.cooling=wet",
]
QUIET = [
    "PLASTIC; cut.cooling=wet",
    "PLASTIC; work.material=casein; cut.cooling=dry",
    "PLASTIC; cut.cooling=wet; work.material=tagua nut",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
