"""Is there extraction?"""

import pytest

from tests.rules.bench import fired

RULE = "say-what-extraction"
FIRES = [
    "PLASTIC; person.extraction=",
]
QUIET = [
    "PLASTIC",
    "SPINDLE; person.extraction=",
    "PLASTIC; person.extraction=no",
    "PLASTIC; person.extraction=; work.material=mdf",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
