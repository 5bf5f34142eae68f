"""Fiber dust is not raised without a mask."""

import pytest

from tests.rules.bench import fired

RULE = "no-mask-for-this"
FIRES = [
    "PLASTIC; work.material=glass epoxy; person.respirator=none",
]
QUIET = [
    "PLASTIC; person.respirator=none",
    "PLASTIC; work.material=glass epoxy; person.respirator=P3",
    "PLASTIC; work.material=glass epoxy; person.respirator=",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
