"""The hold carries the cut even on a bad day."""

import pytest

from tests.rules.bench import fired

RULE = "strong-enough"
FIRES = [
    "SPINDLE; work.state=round",
    "SPINDLE; work.material=iroko",
    "SPINDLE; work.state=round; hold.method=toothed-ring-drive",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.form=round; work.length=34in; machine.tailstock=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
