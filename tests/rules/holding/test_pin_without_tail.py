"""A pin chuck needs the tailstock."""

import pytest

from tests.rules.bench import fired

RULE = "pin-without-tail"
FIRES = [
    "BOWL; hold.method=pin-chuck; machine.tailstock=no",
]
QUIET = [
    "BOWL; hold.method=pin-chuck",
    "BOWL; machine.tailstock=no; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
