"""A jam fit in wet wood lasts minutes."""

import pytest

from tests.rules.bench import fired

RULE = "wet-in-a-jam-fit"
FIRES = [
    "BOWL; hold.method=jam-chuck; work.state=finished; work.moisture=green",
]
QUIET = [
    "BOWL; hold.method=jam-chuck; work.state=finished",
    "BOWL; work.state=finished; work.moisture=green; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
