"""Fiber dust needs a mask: is there one?"""

import pytest

from tests.rules.bench import fired

RULE = "mask-must-be-stated"
FIRES = [
    "PLASTIC; work.material=glass epoxy; person.respirator=",
]
QUIET = [
    "PLASTIC; person.respirator=",
    "PLASTIC; work.material=glass epoxy",
    "PLASTIC; work.material=glass epoxy; person.respirator=none",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
