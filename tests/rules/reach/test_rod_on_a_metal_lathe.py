"""What holds a turned wooden rod on a metal lathe."""

import pytest

from tests.rules.bench import fired

RULE = "rod-on-a-metal-lathe"
FIRES = [
    "ROD",
    "ROD; work.diameter=75mm",
    "ROD; work.grain=diagonal",
    "ROD; work.grain=none",
    "ROD; work.state=finished",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "ROD; work.diameter=80mm",
    "ROD; machine.kind=wood-lathe",
    "ROD; work.state=not-round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
