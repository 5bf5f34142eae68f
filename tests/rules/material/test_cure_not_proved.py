"""A casting is fresh until somebody has tried it."""

import pytest

from tests.rules.bench import fired

RULE = "cure-not-proved"
FIRES = [
    "PLASTIC; work.material=epoxy casting",
    "PLASTIC; work.material=wood and resin",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; work.material=epoxy casting; work.tested=yes",
    "PLASTIC; work.material=epoxy casting; work.condition=[sound]",
    "PLASTIC; work.material=epoxy casting; work.condition=[uncured]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
