"""A crack from the pith to the rim is half of a through crack."""

import pytest

from tests.rules.bench import fired

RULE = "crack-from-pith-to-rim"
FIRES = [
    "BOWL; work.condition=[crack]; work.crack.across=60mm; work.crack.runs=pith-to-rim",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[crack]; work.crack.across=20mm; work.crack.runs=across-face",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
