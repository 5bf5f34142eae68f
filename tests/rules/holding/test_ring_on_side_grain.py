"""Fine teeth hold poorly in side grain."""

import pytest

from tests.rules.bench import fired

RULE = "ring-on-side-grain"
FIRES = [
    "BOWL; hold.method=toothed-ring-drive",
    "BOWL; hold.method=cup-drive",
    "BOWL; hold.method=square-socket-drive",
    "BOWL; hold.method=point-and-pin-drive",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
