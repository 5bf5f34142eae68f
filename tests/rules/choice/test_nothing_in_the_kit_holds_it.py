"""Nothing to hand holds this piece."""

import pytest

from tests.rules.bench import fired

RULE = "nothing-in-the-kit-holds-it"
FIRES = [
    "BOWL; hold.kit=[double-sided-tape, drill-chuck]",
    "BOWL; hold.kit=[friction-block]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; hold.kit=[faceplate-screws, double-sided-tape]",
    "SPINDLE; work.form=round; work.length=34in; machine.tailstock=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
