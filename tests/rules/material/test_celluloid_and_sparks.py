"""Celluloid and sparks never meet."""

import pytest

from tests.rules.bench import fired

RULE = "celluloid-and-sparks"
FIRES = [
    "PLASTIC; work.material=celluloid; work.condition=[nails]",
    "PLASTIC; work.material=celluloid; work.parts=[celluloid, mild steel]",
]
QUIET = [
    "PLASTIC; work.condition=[nails]",
    "PLASTIC; work.material=celluloid",
    "PLASTIC; work.material=ptfe; work.condition=[nails]",
    "PLASTIC; work.condition=[nails]; work.material=magnesium",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
