"""A test opens what was asked about, with care."""

import pytest

from tests.rules.bench import fired

RULE = "tested-and-worked-with-care"
FIRES = [
    "STONE; work.material=soapstone",
]
QUIET = [
    "STONE",
    "STONE; work.material=soapstone; work.tested=no",
    "STONE; work.material=soapstone; work.tested=",
    "PLASTIC",
    "STONE; work.material=carbon fiber",
    "STONE; work.material=stone",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
