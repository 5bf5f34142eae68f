"""What burns is not cut with metal in it."""

import pytest

from tests.rules.bench import fired

RULE = "sparks-in-the-piece"
FIRES = [
    "PLASTIC; work.material=ptfe; work.condition=[nails]",
    "PLASTIC; work.material=aluminum; work.parts=[aluminum, mild steel]",
]
QUIET = [
    "PLASTIC; work.condition=[nails]",
    "PLASTIC; work.material=ptfe",
    "PLASTIC; work.material=celluloid; work.condition=[nails]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
