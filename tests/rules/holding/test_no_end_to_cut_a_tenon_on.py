"""Tubes, rings and balls have no end for a tenon or screws."""

import pytest

from tests.rules.bench import fired

RULE = "no-end-to-cut-a-tenon-on"
FIRES = [
    "BOWL; work.form=ring; hold.method=screw-chuck",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
