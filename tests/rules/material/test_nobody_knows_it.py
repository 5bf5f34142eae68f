"""A name that no table knows is no basis for advice."""

import pytest

from tests.rules.bench import fired

RULE = "nobody-knows-it"
FIRES = [
    "BOWL; work.material=flubberwood",
    "PLASTIC; work.material=mystery",
    "STONE; work.parts=[alabaster, flubberstone]",
]
QUIET = [
    "BOWL",
    "BOWL; work.material=unknown",
    "PLASTIC",
    "SPINDLE; work.material=cocobolo",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
