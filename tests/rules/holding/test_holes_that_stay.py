"""Spurs and screws leave holes."""

import pytest

from tests.rules.bench import fired

RULE = "holes-that-stay"
FIRES = [
    "BOWL; work.state=finished; hold.method=screw-chuck",
    "BOWL; work.state=finished; hold.method=faceplate-screws",
    "BOWL; work.state=finished; hold.method=spur-drive",
    "BOWL; work.state=finished; hold.method=toothed-ring-drive",
    "BOWL; work.state=finished; hold.method=two-spur-drive",
    "BOWL; work.state=finished; hold.method=pin-chuck",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "SPINDLE",
    "BOWL; work.state=finished; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
