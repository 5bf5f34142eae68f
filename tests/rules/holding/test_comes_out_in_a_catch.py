"""In a hard catch it comes out of the hold."""

import pytest

from tests.rules.bench import fired

RULE = "comes-out-in-a-catch"
FIRES = [
    "HOLLOWING",
    "BOWL; machine.tailstock=no; hold.method=jaws-on-tenon",
    "HOLLOW@long-jaws",
    "HOLLOWING; hold.method=screw-chuck",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon",
    "SPINDLE",
    "SPINDLE@spur-drive; machine.tailstock=no",
    "BOWL@waste-block-faceplate",
    "BOWL@pin-chuck",
    "HOLLOWING; machine.power=1200W",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
