"""A jam fit carries light work."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-in-a-jam-fit"
FIRES = [
    "BOWL; hold.method=jam-chuck; work.state=finished; work.mass=5kg",
]
QUIET = [
    "BOWL; hold.method=jam-chuck; work.state=finished; work.mass=1kg",
    "BOWL; hold.method=jam-chuck; work.state=finished; work.mass=4kg",
    "BOWL; work.state=finished; work.mass=5kg; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
