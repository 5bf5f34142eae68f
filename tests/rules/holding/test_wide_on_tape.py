"""Wide discs outgrow tape."""

import pytest

from tests.rules.bench import fired

RULE = "wide-on-tape"
FIRES = [
    "DISC; hold.method=double-sided-tape; work.diameter=200mm",
    "DISC; hold.method=double-sided-tape; work.diameter=180mm",
]
QUIET = [
    "DISC; hold.method=double-sided-tape",
    "DISC; hold.method=double-sided-tape; work.diameter=150mm",
    "DISC; work.diameter=200mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
