"""Hardened plasterboard screws snap."""

import pytest

from tests.rules.bench import fired

RULE = "brittle-screws"
FIRES = [
    "BOWL; hold.method=faceplate-screws; hold.screws.kind=plasterboard",
    "BOWL; hold.method=offset-faceplate; hold.screws.kind=plasterboard",
    "BOWL; hold.screws.kind=plasterboard; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws",
    "BOWL; hold.method=faceplate-screws; hold.screws.kind=wood",
    "BOWL; hold.screws.kind=plasterboard; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
