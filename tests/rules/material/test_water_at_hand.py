"""Celluloid: is there water at hand?"""

import pytest

from tests.rules.bench import fired

RULE = "water-at-hand"
FIRES = [
    "PLASTIC; work.material=celluloid",
    "PLASTIC; work.material=imitation ivory",
]
QUIET = [
    "PLASTIC",
    "PLASTIC; work.material=celluloid; machine.extinguisher=water",
    "PLASTIC; work.material=celluloid; machine.extinguisher=none",
    "PLASTIC; work.material=celluloid; cut.cooling=wet",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
