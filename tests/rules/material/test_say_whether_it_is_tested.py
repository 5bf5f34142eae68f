"""A material with a dangerous look-alike: is there a paper?"""

import pytest

from tests.rules.bench import fired

RULE = "say-whether-it-is-tested"
FIRES = [
    "STONE; work.material=soapstone; work.tested=",
    "PLASTIC; work.material=bronze",
]
QUIET = [
    "STONE; work.material=soapstone",
    "PLASTIC; work.material=bronze; work.tested=yes",
    "PLASTIC",
    "STONE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
