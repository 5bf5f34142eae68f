"""A blank under 35 mm leaves little over the screws."""

import pytest

from tests.rules.bench import fired

RULE = "thin-for-screws"
FIRES = [
    "BOWL; hold.method=faceplate-screws; work.length=30mm",
    "BOWL; hold.method=faceplate-screws; work.length=25mm",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws",
    "BOWL; hold.method=faceplate-screws; work.length=35mm",
    "BOWL; hold.method=faceplate-screws; work.length=24mm",
    "BOWL; work.length=30mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
