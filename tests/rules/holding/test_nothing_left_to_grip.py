"""A finished piece without tenon or recess has nothing left to grip."""

import pytest

from tests.rules.bench import fired

RULE = "nothing-left-to-grip"
FIRES = [
    "BOWL; work.state=finished; hold.method=jaws-on-tenon",
    "BOWL; work.state=finished; hold.method=long-jaws",
    "BOWL; work.state=finished; hold.method=jaws-in-recess",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon",
    "BOWL; work.state=finished; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
    "BOWL; work.state=finished; hold.method=double-sided-tape",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
