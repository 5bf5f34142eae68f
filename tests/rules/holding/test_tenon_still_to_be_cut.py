"""A tenon cannot be gripped before it is cut."""

import pytest

from tests.rules.bench import fired

RULE = "tenon-still-to-be-cut"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon",
    "BOWL; hold.method=long-jaws",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
    "SPINDLE",
    "BOWL; hold.method=jaws-on-tenon; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
