"""A recess in wet wood goes oval and loosens."""

import pytest

from tests.rules.bench import fired

RULE = "recess-in-wet-wood"
FIRES = [
    "BOWL; hold.method=jaws-in-recess; work.state=round; work.moisture=green",
]
QUIET = [
    "PLATTER",
    "BOWL; work.state=round; work.moisture=green; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
