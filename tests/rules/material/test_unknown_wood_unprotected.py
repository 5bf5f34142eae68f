"""Unknown wood without dust control is a bet with your lungs."""

import pytest

from tests.rules.bench import fired

RULE = "unknown-wood-unprotected"
FIRES = [
    "SPINDLE; work.material=unknown; person.extraction=no",
    "SPINDLE; work.material=unknown; person.respirator=none",
    "SPINDLE; work.material=unknown; person.extraction=",
    "SPINDLE; work.material=unknown; person.extraction=no; work.diameter=5in",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.material=unknown",
    "BOWL",
    "SPINDLE; work.material=unknown; person.extraction=no; work.diameter=6in",
    "SPINDLE; person.extraction=no; work.material=ponderosa pine",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
