"""Light metal that burns: is there class D powder or dry sand?"""

import pytest

from tests.rules.bench import fired

RULE = "class-d-at-hand"
FIRES = [
    "PLASTIC; work.material=magnesium",
    "PLASTIC; work.material=titanium",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; work.material=magnesium; machine.extinguisher=class-D",
    "PLASTIC; work.material=magnesium; machine.extinguisher=none",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
