"""Coral and teeth: where are the papers?"""

import pytest

from tests.rules.bench import fired

RULE = "papers-not-stated"
FIRES = [
    "STONE; work.material=coral; work.tested=; work.raw=no",
]
QUIET = [
    "STONE; work.material=coral; work.raw=no",
    "STONE",
    "STONE; work.tested=; work.raw=no; work.material=aluminum",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
