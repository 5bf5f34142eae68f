"""Board bursts when it is large."""

import pytest

from tests.rules.bench import fired

RULE = "board-too-large"
FIRES = [
    "PLASTIC; work.material=mdf; work.diameter=250mm",
]
QUIET = [
    "PLASTIC; work.material=mdf",
    "BOWL",
    "PLASTIC; work.material=celluloid; work.diameter=250mm",
    "PLASTIC; work.diameter=250mm; work.material=plywood",
    "PLASTIC; work.material=mdf; work.diameter=200mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
