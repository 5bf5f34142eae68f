"""Tubes, rings and balls have no end for a tenon or screws."""

import pytest

from tests.rules.bench import fired

RULE = "no-end-to-cut-a-tenon-on"
FIRES = [
    "BOWL; work.form=ring; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck; work.form=tube",
    "BOWL; hold.method=screw-chuck; work.form=sphere",
    "BOWL; work.form=ring; hold.method=jaws-on-tenon",
    "BOWL; work.form=ring; hold.method=faceplate-screws",
    "BOWL; work.form=ring; hold.method=cup-drive",
    "BOWL; work.form=ring; hold.method=spur-drive",
    "BOWL; work.form=ring; hold.method=toothed-ring-drive",
    "BOWL; work.form=ring; hold.method=two-spur-drive",
    "BOWL; work.form=ring; hold.method=pin-chuck",
    "BOWL; work.form=ring; hold.method=long-jaws",
    "BOWL; work.form=ring; hold.method=point-and-pin-drive",
    "BOWL; work.form=ring; hold.method=jaws-in-recess",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "SPINDLE",
    "BOWL; work.form=ring; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
