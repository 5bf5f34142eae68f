"""No ordinary hold takes this piece as it is."""

import pytest

from tests.rules.bench import fired

RULE = "no-hold-found"
FIRES = [
    "SPINDLE; work.form=round; work.length=34in; machine.tailstock=no",
    "BOWL; work.material=flubberwood",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "ROD",
    "SPINDLE; work.form=round; work.length=34in; machine.tailstock=no; hold.kit=[double-sided-tape, drill-chuck]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
