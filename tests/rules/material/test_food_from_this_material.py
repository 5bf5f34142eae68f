"""Food and toys from what poisons or sensitizes."""

import pytest

from tests.rules.bench import fired

RULE = "food-from-this-material"
FIRES = [
    "PLASTIC; work.material=brass; work.use=food",
    "PLASTIC; work.material=canvas phenolic; work.use=toy",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; work.use=food",
    "PLASTIC; work.material=brass",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
