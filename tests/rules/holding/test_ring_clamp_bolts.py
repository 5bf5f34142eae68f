"""A ring clamp's bolts stand out."""

import pytest

from tests.rules.bench import fired

RULE = "ring-clamp-bolts"
FIRES = [
    "BOWL; hold.method=ring-clamp-plate; work.state=finished",
    "BOWL; hold.method=ring-clamp-plate; work.state=round",
]
QUIET = [
    "BOWL; hold.method=ring-clamp-plate",
    "SPINDLE",
    "BOWL; work.state=finished; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
