"""Stone that may hold asbestos or silica is never cut dry."""

import pytest

from tests.rules.bench import fired

RULE = "suspect-stone-cut-dry"
FIRES = [
    "STONE; work.material=soapstone; cut.cooling=dry",
    "STONE; work.material=soapstone; cut.cooling=air",
    "STONE; work.material=unknown stone; work.tested=no; cut.cooling=dry",
]
QUIET = [
    "STONE; cut.cooling=dry",
    "STONE; work.material=soapstone; cut.cooling=wet",
    "STONE; work.material=shell; work.raw=no; cut.cooling=dry",
    "STONE; cut.cooling=dry; work.material=celluloid",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
