"""A plastic nobody can name may be celluloid."""

import pytest

from tests.rules.bench import fired

RULE = "water-for-the-chips"
FIRES = [
    "PLASTIC; work.material=unknown plastic",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; work.material=celluloid; machine.extinguisher=water",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
