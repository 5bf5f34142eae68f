"""A crack that gapes is already moving."""

import pytest

from tests.rules.bench import fired

RULE = "crack-gapes"
FIRES = [
    "BOWL; work.condition=[crack]; work.crack.across=20mm; work.crack.gap=2mm",
    "BOWL; work.condition=[crack]; work.crack.across=20mm; work.crack.gap=1.25mm",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[crack]; work.crack.across=20mm; work.crack.gap=0.5mm",
    "BOWL; work.crack.gap=1mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
