"""A drive under the finished size carries this cut too."""

import pytest

from tests.rules.bench import fired

RULE = "smaller-drive-would-do"
FIRES = [
    "SPINDLE; hold.method=spur-drive; work.state=round; work.diameter=3in; work.finished_diameter=26mm",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; work.finished_diameter=12mm; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
