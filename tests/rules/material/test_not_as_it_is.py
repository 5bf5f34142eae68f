"""Some materials are not turned as they are."""

import pytest

from tests.rules.bench import fired

RULE = "not-as-it-is"
FIRES = [
    "PLASTIC; work.material=uncured resin",
    "PLASTIC; work.material=uncured resin; work.tested=yes",
]
QUIET = [
    "PLASTIC",
    "STONE; work.material=granite",
    "STONE; work.material=unknown stone; work.tested=",
    "PLASTIC; work.material=epoxy casting",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
