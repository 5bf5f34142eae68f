"""In a hard catch seated teeth tear out."""

import pytest

from tests.rules.bench import fired

RULE = "teeth-tear-out-in-a-catch"
FIRES = [
    "SPINDLE; work.material=ponderosa pine; hold.method=two-spur-drive",
    "SPINDLE; work.material=ponderosa pine",
    "SPINDLE; work.material=bubinga; hold.method=spur-drive",
]
QUIET = [
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
    "SPINDLE; hold.method=two-spur-drive; work.material=yew",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
