"""A small sound piece of unknown wood is a fair trial."""

import pytest

from tests.rules.bench import fired

RULE = "unknown-wood-small"
FIRES = [
    "SPINDLE; work.material=unknown",
    "SPINDLE; work.material=unknown; work.condition=[sound]",
    "SPINDLE; work.material=unknown; work.diameter=5in",
]
QUIET = [
    "SPINDLE",
    "BOWL; work.material=unknown",
    "SPINDLE; work.material=unknown; work.condition=[check]",
    "SPINDLE; work.material=unknown; work.diameter=6in",
    "SPINDLE; work.material=unknown; person.extraction=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
