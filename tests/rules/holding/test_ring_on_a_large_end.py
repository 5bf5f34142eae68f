"""A toothed ring is for ends to 100 mm."""

import pytest

from tests.rules.bench import fired

RULE = "ring-on-a-large-end"
FIRES = [
    "SPINDLE; hold.method=toothed-ring-drive; work.diameter=6in",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; work.diameter=6in; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=toothed-ring-drive; work.diameter=5.5in",
    "ROD; work.diameter=100mm; hold.method=toothed-ring-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
