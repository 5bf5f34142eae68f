"""The tailstock belongs up wherever it reaches."""

import pytest

from tests.rules.bench import fired

RULE = "tailstock-up"
FIRES = [
    "BOWL",
    "DISC",
    "BOWL; hold.method=jaws-on-tenon",
    "BOWL; hold.method=faceplate-screws",
    "ROD; hold.method=collet",
]
QUIET = [
    "SPINDLE",
    "HOLLOW",
    "HOLLOWING",
    "BOWL; machine.tailstock=no",
    "BOWL; hold.tail.kind=none",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
