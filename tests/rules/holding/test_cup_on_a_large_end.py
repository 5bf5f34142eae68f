"""A cup drives work to about 75 mm."""

import pytest

from tests.rules.bench import fired

RULE = "cup-on-a-large-end"
FIRES = [
    "SPINDLE; hold.method=cup-drive; work.diameter=5in",
]
QUIET = [
    "SPINDLE; hold.method=cup-drive",
    "SPINDLE; work.diameter=5in; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=cup-drive; work.diameter=4in",
    "ROD; work.diameter=75mm; hold.method=cup-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
