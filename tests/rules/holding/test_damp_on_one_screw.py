"""Small wet work on one screw asks for care."""

import pytest

from tests.rules.bench import fired

RULE = "damp-on-one-screw"
FIRES = [
    "BOWL; hold.method=screw-chuck; work.moisture=green; work.diameter=7in",
    "BOWL; hold.method=screw-chuck; work.moisture=green; work.diameter=200mm",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck; work.moisture=green",
    "BOWL; work.moisture=green; work.diameter=7in; hold.method=jaws-on-tenon",
    "BOWL; hold.method=screw-chuck; work.diameter=7in; work.moisture=dry",
    "BOWL; hold.method=screw-chuck; work.moisture=green; work.diameter=8in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
