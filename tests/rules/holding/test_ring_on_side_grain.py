"""Fine teeth hold poorly in side grain."""

import pytest

from tests.rules.bench import fired

RULE = "ring-on-side-grain"
FIRES = [
    "BOWL; hold.method=toothed-ring-drive",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
