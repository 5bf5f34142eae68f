"""Segmented rings fail at the end-grain joints."""

import pytest

from tests.rules.bench import fired

RULE = "segmented-work"
FIRES = [
    "BOWL; work.form=segmented",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.form=disc",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
