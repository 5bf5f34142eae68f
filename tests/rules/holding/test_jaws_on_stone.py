"""Jaws crack stone."""

import pytest

from tests.rules.bench import fired

RULE = "jaws-on-stone"
FIRES = [
    "STONE; hold.method=jaws-on-tenon",
    "STONE; hold.method=three-jaw",
    "STONE; hold.method=screw-chuck",
    "STONE; hold.method=long-jaws",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
    "STONE; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
