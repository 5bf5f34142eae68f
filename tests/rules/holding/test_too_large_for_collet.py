"""A collet takes rod to 40 mm."""

import pytest

from tests.rules.bench import fired

RULE = "too-large-for-collet"
FIRES = [
    "ROD; hold.method=collet; work.diameter=50mm",
]
QUIET = [
    "SPINDLE",
    "ROD; work.diameter=10mm; hold.method=collet",
    "ROD; hold.method=collet; work.diameter=40mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
