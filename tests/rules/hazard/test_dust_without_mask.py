"""Ordinary dust and a bare face."""

import pytest

from tests.rules.bench import fired

RULE = "dust-without-mask"
FIRES = [
    "PLASTIC; work.material=plywood; person.respirator=none",
    "SPINDLE; work.material=coconut shell; person.respirator=none",
]
QUIET = [
    "PLASTIC; person.respirator=none",
    "PLASTIC; work.material=plywood",
    "SPINDLE; person.respirator=none",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
