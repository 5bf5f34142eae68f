"""Two spurs split a small end."""

import pytest

from tests.rules.bench import fired

RULE = "two-spurs-in-a-small-end"
FIRES = [
    "SPINDLE; hold.method=two-spur-drive; work.diameter=1.5in",
    "SPINDLE; hold.method=two-spur-drive; work.diameter=1.8in",
]
QUIET = [
    "SPINDLE; hold.method=two-spur-drive",
    "BOWL; hold.method=two-spur-drive",
    "SPINDLE; work.diameter=1.5in; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=two-spur-drive; work.diameter=2.4in",
    "SPINDLE; hold.method=two-spur-drive; work.diameter=1.5in; work.grain=across",
    "ROD; work.diameter=40mm; hold.method=two-spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
