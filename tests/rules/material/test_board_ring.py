"""A thin ring of board bursts."""

import pytest

from tests.rules.bench import fired

RULE = "board-ring"
FIRES = [
    "PLASTIC; work.material=mdf; work.form=ring; work.wall=10mm",
]
QUIET = [
    "PLASTIC; work.material=mdf",
    "PLASTIC; work.form=ring; work.wall=10mm",
    "PLASTIC; work.form=ring; work.wall=10mm; work.material=plywood",
    "PLASTIC; work.form=ring; work.wall=10mm; work.material=celluloid",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
