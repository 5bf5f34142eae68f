"""Nobody knows what a nameless material stands."""

import pytest

from tests.rules.bench import fired

RULE = "strength-unknown"
FIRES = [
    "BOWL; work.material=flubberwood; hold.method=jaws-on-tenon",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon",
    "PLASTIC",
    "BOWL; work.material=flubberwood; hold.method=cup-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
