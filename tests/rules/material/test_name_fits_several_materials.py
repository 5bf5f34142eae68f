"""A name that fits several materials may hide the dangerous one."""

import pytest

from tests.rules.bench import fired

RULE = "name-fits-several-materials"
FIRES = [
    "PLASTIC; work.material=plastic",
    "PLASTIC; work.material=resin",
    "STONE; work.material=stone",
    "STONE; work.parts=[alabaster, steel]",
]
QUIET = [
    "PLASTIC",
    "STONE",
    "SPINDLE; work.material=maple",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
