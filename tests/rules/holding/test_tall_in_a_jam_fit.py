"""Tall work rocks out of a jam fit."""

import pytest

from tests.rules.bench import fired

RULE = "tall-in-a-jam-fit"
FIRES = [
    "HOLLOW; hold.method=jam-chuck; work.state=finished",
]
QUIET = [
    "BOWL; hold.method=jam-chuck; work.state=finished",
    "HOLLOW; hold.method=jam-chuck; work.state=finished; work.length=7.5in",
    "HOLLOW; work.state=finished; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
