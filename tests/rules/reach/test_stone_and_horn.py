"""What holds stone, horn, bone, shell and rough resin."""

import pytest

from tests.rules.bench import fired

RULE = "stone-and-horn"
FIRES = [
    "STONE",
    "STONE; work.material=pencils in resin",
    "STONE; work.material=bone",
    "STONE; work.material=epoxy casting",
]
QUIET = [
    "SPINDLE",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
