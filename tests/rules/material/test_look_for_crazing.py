"""Look for crazing against a light."""

import pytest

from tests.rules.bench import fired

RULE = "look-for-crazing"
FIRES = [
    "PLASTIC",
    "PLASTIC; work.material=polycarbonate",
]
QUIET = [
    "SPINDLE",
    "PLASTIC; work.condition=[sound]",
    "PLASTIC; work.condition=[stress-crazed]",
    "PLASTIC; work.material=acetal",
    "PLASTIC; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
