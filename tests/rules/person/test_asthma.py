"""Asthma and dust do not go together."""

import pytest

from tests.rules.bench import fired

RULE = "asthma"
FIRES = [
    "SPINDLE; person.asthma=yes",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; person.asthma=no",
    "SPINDLE; person.asthma=yes; work.condition=[punky]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
