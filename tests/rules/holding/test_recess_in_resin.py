"""Jaws spreading in resin crack it."""

import pytest

from tests.rules.bench import fired

RULE = "recess-in-resin"
FIRES = [
    "PLASTIC; hold.method=jaws-in-recess",
    "PLASTIC; hold.method=jaws-in-recess; work.material=canvas phenolic",
    "PLASTIC; hold.method=jaws-in-recess; work.material=pencils in resin",
    "PLASTIC; hold.method=jaws-in-recess; work.material=bone",
    "PLASTIC; hold.method=jaws-in-recess; work.material=soapstone",
    "PLASTIC; hold.method=jaws-in-recess; work.material=epoxy casting",
]
QUIET = [
    "PLATTER",
    "BOWL; hold.method=jaws-in-recess",
    "PLASTIC; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
