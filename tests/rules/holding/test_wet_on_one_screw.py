"""Wet wood lets one screw go."""

import pytest

from tests.rules.bench import fired

RULE = "wet-on-one-screw"
FIRES = [
    "BOWL; hold.method=screw-chuck; work.moisture=green",
    "BOWL; hold.method=screw-chuck; work.moisture=green; work.diameter=9.5in",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck; work.moisture=green; work.diameter=7in",
    "BOWL; work.moisture=green; hold.method=jaws-on-tenon",
    "BOWL; hold.method=screw-chuck; work.moisture=green; work.diameter=200mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
