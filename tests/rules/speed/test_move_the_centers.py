"""The centers belong on the middle of the mass."""

import pytest

from tests.rules.bench import fired

RULE = "move-the-centers"
FIRES = [
    "BOWL; work.offset=4mm",
    "BOWL; work.balance_test.weight=0.4kg; work.balance_test.radius=100mm",
    "BOWL; work.radii=[120mm, 124mm, 127mm, 124mm, 120mm, 116mm, 113mm, 116mm]",
    "BOWL; work.offset=1.25mm",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.offset=0.5mm",
    "BOWL; work.state=round; work.offset=4mm",
    "BOWL; work.offset=1mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
