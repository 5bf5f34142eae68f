"""Spalted wood and asthma have killed."""

import pytest

from tests.rules.bench import fired

RULE = "asthma-and-spores"
FIRES = [
    "BOWL; work.condition=[spalted]; person.asthma=yes",
]
QUIET = [
    "BOWL",
    "BOWL; work.condition=[spalted]",
    "BOWL; person.asthma=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
