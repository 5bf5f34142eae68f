"""Engineers' chucks are out of place on a wood lathe."""

import pytest

from tests.rules.bench import fired

RULE = "engineers-chuck-on-a-wood-lathe"
FIRES = [
    "SPINDLE@three-jaw",
    "SPINDLE@four-jaw-independent",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "SPINDLE; hold.method=four-jaw-independent",
    "SPINDLE",
    "SPINDLE@three-jaw; machine.kind=metal-lathe",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
