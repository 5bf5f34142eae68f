"""Metal chips and wood dust never share a bag."""

import pytest

from tests.rules.bench import fired

RULE = "metal-dust-and-wood-dust"
FIRES = [
    "PLASTIC; work.material=brass",
    "PLASTIC; work.material=aluminum",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
