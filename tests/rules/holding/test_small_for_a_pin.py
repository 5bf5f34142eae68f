"""A pin takes the middle out of small work."""

import pytest

from tests.rules.bench import fired

RULE = "small-for-a-pin"
FIRES = [
    "PLASTIC@pin-chuck",
    "KNOB; hold.method=pin-chuck",
    "PLASTIC@pin-chuck; work.diameter=60mm",
]
QUIET = [
    "BOWL@pin-chuck",
    "STONE@pin-chuck",
    "KNOB@screw-chuck",
    "PLASTIC@pin-chuck; work.diameter=75mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
