"""A toothed ring does not bite in punk."""

import pytest

from tests.rules.bench import fired

RULE = "ring-in-a-soft-end"
FIRES = [
    "SPINDLE; hold.method=toothed-ring-drive; work.condition=[punky]",
    "SPINDLE; work.condition=[punky]; hold.method=cup-drive",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; work.condition=[punky]; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
