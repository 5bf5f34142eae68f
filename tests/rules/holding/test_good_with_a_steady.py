"""A long piece in a chuck that a steady makes good."""

import pytest

from tests.rules.bench import fired

RULE = "good-with-a-steady"
FIRES = [
    "LONGHOLD",
    "LONGHOLD; hold.method=rubber-button-jaws",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "LONGHOLD; hold.method=glue-block",
    "LONGHOLD; work.material=glass epoxy",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
