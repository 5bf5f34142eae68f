"""Unknown wood with faults is asked about first."""

import pytest

from tests.rules.bench import fired

RULE = "unknown-wood-faulty"
FIRES = [
    "SPINDLE; work.material=unknown; work.condition=[check]",
    "SPINDLE; work.material=unknown; work.condition=[check]; work.diameter=5in",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=unknown",
    "SPINDLE; work.condition=[check]",
    "SPINDLE; work.material=unknown; work.condition=[check]; work.diameter=6in",
    "SPINDLE; work.material=unknown; work.condition=[check]; person.extraction=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
