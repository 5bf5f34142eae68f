"""What holds a natural-edge blank."""

import pytest

from tests.rules.bench import fired

RULE = "natural-edge-blank"
FIRES = [
    "BOWL; work.condition=[live-edge]; work.moisture=12%",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.condition=[live-edge]; work.moisture=12%; work.grain=along",
    "BOWL; work.condition=[live-edge]; work.moisture=12%; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
