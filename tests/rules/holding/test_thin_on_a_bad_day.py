"""The hold carries the cut on an ordinary day and not on a bad one."""

import pytest

from tests.rules.bench import fired

RULE = "thin-on-a-bad-day"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
    "BOWL; hold.tenon.diameter=75mm; hold.method=two-spur-drive",
]
QUIET = [
    "SPINDLE; work.state=round",
    "SPINDLE; work.state=round; hold.method=mandrel",
    "BOWL; hold.tenon.diameter=75mm; hold.method=collet",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
