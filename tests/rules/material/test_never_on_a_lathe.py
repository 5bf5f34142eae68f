"""Some materials are never turned here."""

import pytest

from tests.rules.bench import fired

RULE = "never-on-a-lathe"
FIRES = [
    "STONE; work.material=granite",
    "PLASTIC; work.material=beryllium copper",
    "PLASTIC; work.material=unknown metal",
    "SPINDLE; work.material=treated pine",
    "SPINDLE; work.material=railway sleeper",
    "STONE; work.parts=[alabaster, lead]",
]
QUIET = [
    "PLASTIC",
    "SPINDLE",
    "STONE",
    "PLASTIC; work.material=brass; work.tested=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
