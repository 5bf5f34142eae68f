"""What holds a log, half-log, slab or natural edge for a bowl."""

import pytest

from tests.rules.bench import fired

RULE = "log-face"
FIRES = [
    "BOWL; work.form=half-log; work.moisture=12%",
    "BOWL; work.form=slab",
    "BOWL; work.form=log",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.form=half-log; work.moisture=12%; work.grain=along",
    "BOWL; work.form=half-log; work.moisture=12%; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
