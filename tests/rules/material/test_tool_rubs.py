"""A chip too thin is no chip."""

import pytest

from tests.rules.bench import fired

RULE = "tool-rubs"
FIRES = [
    "PLASTIC; cut.tool=carriage; cut.feed=0.02mm/rev",
    "PLASTIC; cut.tool=carriage; cut.feed=0.04mm/rev",
]
QUIET = [
    "PLASTIC; cut.tool=carriage; cut.feed=0.1mm/rev",
    "PLASTIC; cut.tool=carriage",
    "SPINDLE",
    "PLASTIC; cut.tool=carriage; cut.feed=0.05mm/rev",
    "PLASTIC; cut.feed=0.02mm/rev",
    "PLASTIC; cut.tool=carriage; cut.feed=0.02mm/rev; work.material=magnesium",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
