"""No adhesive holds this plastic."""

import pytest

from tests.rules.bench import fired

RULE = "nothing-sticks"
FIRES = [
    "PLASTIC; work.material=acetal; hold.method=glue-block",
    "PLASTIC; work.material=acetal; hold.method=double-sided-tape",
    "PLASTIC; work.material=acetal; hold.method=paper-joint",
    "PLASTIC; work.material=acetal; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "PLASTIC; hold.method=glue-block",
    "PLASTIC; work.material=acetal; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
