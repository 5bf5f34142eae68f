"""A hold that only just carries the cut is not advised."""

import pytest

from tests.rules.bench import fired

RULE = "margin-too-thin"
FIRES = [
    "HOLLOWING; hold.tenon.diameter=52mm; cut.force=80N",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
