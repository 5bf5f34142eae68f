"""A pin drive does not take a lopsided piece."""

import pytest

from tests.rules.bench import fired

RULE = "pin-drive-out-of-balance"
FIRES = [
    "SPINDLE; hold.method=point-and-pin-drive; work.diameter=20mm",
]
QUIET = [
    "SPINDLE; hold.method=point-and-pin-drive; work.diameter=20mm; work.state=round",
    "SPINDLE; work.diameter=20mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
