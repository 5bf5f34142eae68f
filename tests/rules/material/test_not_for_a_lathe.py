"""Some materials wait for a name or a laboratory."""

import pytest

from tests.rules.bench import fired

RULE = "not-for-a-lathe"
FIRES = [
    "STONE; work.material=unknown stone; work.tested=",
    "PLASTIC; work.material=old black molding",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "STONE; work.material=granite",
    "STONE; work.material=unknown stone",
    "STONE; work.material=unknown stone; work.tested=no",
    "STONE; work.tested=; work.material=soapstone",
    "STONE; work.tested=; work.material=granite",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
