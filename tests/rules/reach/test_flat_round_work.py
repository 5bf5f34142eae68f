"""What holds flat round side-grain work."""

import pytest

from tests.rules.bench import fired

RULE = "flat-round-work"
FIRES = [
    "PLATTER; work.state=round",
    "PLATTER; work.state=round; work.length=45mm",
    "BOWL; work.state=round; work.diameter=300mm; work.length=50mm",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "PLATTER; work.state=round; work.length=55mm",
    "PLATTER; work.state=round; work.grain=along",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
