"""A dust that is kept down with water: dry or wet?"""

import pytest

from tests.rules.bench import fired

RULE = "dry-or-wet"
FIRES = [
    "STONE; work.material=soapstone",
    "STONE; work.material=mother of pearl; work.raw=no",
]
QUIET = [
    "STONE",
    "STONE; work.material=soapstone; cut.cooling=wet",
    "STONE; work.material=soapstone; cut.cooling=dry",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
