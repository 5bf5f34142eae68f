"""What was tested has a name now."""

import pytest

from tests.rules.bench import fired

RULE = "tested-but-not-named"
FIRES = [
    "STONE; work.material=unknown stone",
    "PLASTIC; work.material=old black molding; work.tested=yes",
]
QUIET = [
    "STONE",
    "STONE; work.material=unknown stone; work.tested=no",
    "PLASTIC",
    "STONE; work.material=soapstone",
    "STONE; work.material=granite",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
