"""Stone and old moldings that may be asbestos wait for the laboratory."""

import pytest

from tests.rules.bench import fired

RULE = "untested-and-suspect"
FIRES = [
    "STONE; work.material=unknown stone; work.tested=no",
    "PLASTIC; work.material=old black molding; work.tested=no",
]
QUIET = [
    "STONE; work.tested=no",
    "PLASTIC",
    "STONE; work.material=soapstone; work.tested=no",
    "STONE; work.material=unknown stone",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
