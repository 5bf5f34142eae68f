"""No ordinary hold takes this piece as it is."""

import pytest

from tests.rules.bench import fired

RULE = "no-hold-found"
FIRES = [
    "SPINDLE; work.form=round; work.length=34in; machine.tailstock=no",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "ROD",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
