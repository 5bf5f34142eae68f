"""A large cracked lump of unknown wood is three doubts at once."""

import pytest

from tests.rules.bench import fired

RULE = "unknown-and-cracked"
FIRES = [
    "BOWL; work.material=unknown; work.condition=[crack]; work.crack.across=20mm",
    "BOWL; work.material=unknown; work.condition=[crack]; work.crack.across=20mm; work.diameter=6in",
    "BOWL; work.condition=[crack]; work.crack.across=20mm; work.material=mystery",
]
QUIET = [
    "BOWL",
    "BOWL; work.material=unknown",
    "BOWL; work.condition=[crack]; work.crack.across=20mm",
    "SPINDLE; work.material=unknown; work.condition=[crack]; work.crack.across=5mm",
    "BOWL; work.material=unknown; work.condition=[crack]; work.crack.across=20mm; work.diameter=5.5in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
