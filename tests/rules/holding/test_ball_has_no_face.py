"""A ball has no flat face."""

import pytest

from tests.rules.bench import fired

RULE = "ball-has-no-face"
FIRES = [
    "BALL; hold.method=glue-block",
    "BALL@waste-block-faceplate",
    "BALL@offset-faceplate",
    "BALL@clamped-faceplate",
    "BALL; hold.method=double-sided-tape",
    "BALL; hold.method=paper-joint",
]
QUIET = [
    "BALL",
    "BALL@jam-chuck",
    "BALL@vacuum",
    "DISC; hold.method=glue-block",
    "BOWL@waste-block-faceplate",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
