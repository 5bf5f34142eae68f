"""Asthma and the dust of resin or board."""

import pytest

from tests.rules.bench import fired

RULE = "asthma-and-resin-dust"
FIRES = [
    "PLASTIC; work.material=epoxy casting; work.tested=yes; person.asthma=yes",
    "PLASTIC; work.tested=yes; person.asthma=yes; work.material=pencils in resin",
]
QUIET = [
    "PLASTIC; person.asthma=yes",
    "PLASTIC; work.material=epoxy casting; work.tested=yes",
    "PLASTIC; work.tested=yes; person.asthma=yes; work.material=mdf",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
