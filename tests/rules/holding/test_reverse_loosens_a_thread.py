"""On a threaded nose every screwed-on hold can unscrew in reverse."""

import pytest

from tests.rules.bench import fired

RULE = "reverse-loosens-a-thread"
FIRES = [
    "BOWL; hold.method=faceplate-screws; machine.nose=threaded; cut.rotation=reverse",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws; machine.nose=threaded",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
