"""A plate of screws needs room for its circle."""

import pytest

from tests.rules.bench import fired

RULE = "plate-on-a-small-end"
FIRES = [
    "KNOB; hold.method=faceplate-screws",
    "ROD@faceplate-screws",
    "SPINDLE; hold.method=offset-faceplate",
    "KNOB; hold.method=faceplate-screws; work.diameter=3.5in",
]
QUIET = [
    "BOWL; hold.method=faceplate-screws",
    "DISC@faceplate-screws",
    "PLASTIC@offset-faceplate",
    "KNOB; hold.method=screw-chuck",
    "ROD@faceplate-screws; work.diameter=75mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
