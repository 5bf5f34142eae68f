"""Round work wider than the carriage allows needs the carriage out of reach."""

import pytest

from tests.rules.bench import fired

RULE = "carriage-stays-away"
FIRES = [
    "METALBOWL; machine.swing_over_carriage=6in; work.state=round",
    "METALBOWL; work.state=round; machine.swing_over_carriage=8in",
    "METALBOWL; work.state=finished; machine.swing_over_carriage=8in",
]
QUIET = [
    "METALBOWL",
    "METALBOWL; machine.swing_over_carriage=6in",
    "METALBOWL; work.state=round; machine.swing_over_carriage=10in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
