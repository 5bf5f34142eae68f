"""A thin blank has no room for screws."""

import pytest

from tests.rules.bench import fired

RULE = "too-thin-for-screws"
FIRES = [
    "BOWL; hold.method=faceplate-screws; work.length=20mm",
    "BOWL; hold.method=offset-faceplate; work.length=20mm",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws",
    "BOWL; hold.method=offset-faceplate",
    "STONE; hold.method=offset-faceplate; work.length=20mm",
    "BOWL; hold.method=faceplate-screws; work.length=25mm",
    "BOWL; work.length=20mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
