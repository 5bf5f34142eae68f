"""A short measured crack asks for low speed and a watchful eye."""

import pytest

from tests.rules.bench import fired

RULE = "crack-small"
FIRES = [
    "BOWL; work.condition=[crack]; work.crack.across=20mm",
    "BOWL; work.crack.across=70mm",
    "BOWL; work.diameter=300mm; work.condition=[crack]; work.crack.across=100mm",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[crack]",
    "BOWL; work.condition=[check]",
    "BOWL; work.crack.across=85mm",
    "BOWL; work.condition=[check]; work.crack.across=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
