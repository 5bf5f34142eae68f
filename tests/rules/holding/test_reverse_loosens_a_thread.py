"""On a threaded nose every screwed-on hold can unscrew in reverse."""

import pytest

from tests.rules.bench import fired

RULE = "reverse-loosens-a-thread"
FIRES = [
    "BOWL; hold.method=faceplate-screws; machine.nose=threaded; cut.rotation=reverse",
    "BOWL; machine.nose=threaded; cut.rotation=reverse; hold.method=jaws-on-tenon",
    "BOWL; machine.nose=threaded; cut.rotation=reverse; hold.method=sphere-cups",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws; machine.nose=threaded",
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws; cut.rotation=reverse",
    "BOWL; machine.nose=threaded; cut.rotation=reverse; hold.method=double-sided-tape",
    "BOWL; hold.method=faceplate-screws; machine.nose=threaded; cut.rotation=reverse; machine.nose_lock=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
