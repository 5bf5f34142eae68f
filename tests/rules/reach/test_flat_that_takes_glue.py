"""What holds a flat disc of plastic or laminate."""

import pytest

from tests.rules.bench import fired

RULE = "flat-that-takes-glue"
FIRES = [
    "DISC; work.material=acrylic",
]
QUIET = [
    "SPINDLE",
    "DISC",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
