"""Shell and pearl are worked wet."""

import pytest

from tests.rules.bench import fired

RULE = "cut-dry"
FIRES = [
    "STONE; work.material=mother of pearl; work.raw=no; cut.cooling=dry",
    "STONE; work.material=mother of pearl; work.raw=no; cut.cooling=air",
]
QUIET = [
    "STONE; work.material=mother of pearl; work.raw=no; cut.cooling=wet",
    "STONE; cut.cooling=dry",
    "STONE; work.material=soapstone; cut.cooling=dry",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
