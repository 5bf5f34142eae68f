"""Is there a mask?"""

import pytest

from tests.rules.bench import fired

RULE = "say-which-mask"
FIRES = [
    "PLASTIC; work.material=plywood; person.respirator=",
    "PLASTIC; work.material=canvas phenolic; person.respirator=",
]
QUIET = [
    "PLASTIC; person.respirator=",
    "PLASTIC; work.material=plywood",
    "SPINDLE; person.respirator=",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
