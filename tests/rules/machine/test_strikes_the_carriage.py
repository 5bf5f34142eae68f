"""A lopsided blank wider than the swing over the carriage strikes it."""

import pytest

from tests.rules.bench import fired

RULE = "strikes-the-carriage"
FIRES = [
    "METALBOWL; machine.swing_over_carriage=6in",
    "METALBOWL; machine.swing_over_carriage=8in",
]
QUIET = [
    "METALBOWL",
    "METALBOWL; machine.swing_over_carriage=12in",
    "BOWL",
    "METALBOWL; machine.swing_over_carriage=10in",
    "METALBOWL; machine.swing_over_carriage=6in; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
