"""A split bushing takes rod to 75 mm."""

import pytest

from tests.rules.bench import fired

RULE = "too-large-for-split-bushing"
FIRES = [
    "ROD; hold.method=split-bushing; work.diameter=90mm",
]
QUIET = [
    "SPINDLE",
    "ROD; work.diameter=10mm; hold.method=split-bushing",
    "ROD; hold.method=split-bushing; work.diameter=75mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
