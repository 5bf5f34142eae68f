"""Nobody hollows on tape."""

import pytest

from tests.rules.bench import fired

RULE = "hollowing-on-tape"
FIRES = [
    "DISC; hold.method=double-sided-tape; cut.operation=hollowing",
]
QUIET = [
    "DISC; hold.method=double-sided-tape",
    "DISC; cut.operation=hollowing; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
