"""Bare three jaws on wood when nothing else is there."""

import pytest

from tests.rules.bench import fired

RULE = "bare-jaws-alone"
FIRES = [
    "ROD; hold.kit=[three-jaw]",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "SPINDLE",
    "ROD; hold.kit=[three-jaw]; work.material=aluminum",
    "ROD; work.diameter=10mm; hold.kit=[collet]; hold.chuck.jaw_smallest=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
