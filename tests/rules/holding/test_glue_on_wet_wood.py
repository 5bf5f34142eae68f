"""Most glue does not hold on wet wood."""

import pytest

from tests.rules.bench import fired

RULE = "glue-on-wet-wood"
FIRES = [
    "BOWL; hold.method=glue-block; work.moisture=green",
]
QUIET = [
    "BOWL; hold.method=glue-block",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
