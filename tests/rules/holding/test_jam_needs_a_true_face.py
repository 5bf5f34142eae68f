"""A jam fit needs a true round."""

import pytest

from tests.rules.bench import fired

RULE = "jam-needs-a-true-face"
FIRES = [
    "BOWL; hold.method=jam-chuck",
]
QUIET = [
    "BOWL; hold.method=jam-chuck; work.state=finished; work.length=2in",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
