"""Screws split board along its edge and strip its face."""

import pytest

from tests.rules.bench import fired

RULE = "screws-into-board"
FIRES = [
    "PLASTIC; work.material=mdf; hold.method=faceplate-screws",
    "PLASTIC; work.material=mdf; hold.method=spur-drive",
    "PLASTIC; work.material=mdf; hold.method=toothed-ring-drive",
    "PLASTIC; work.material=mdf; hold.method=two-spur-drive",
    "PLASTIC; work.material=mdf; hold.method=screw-chuck",
]
QUIET = [
    "PLASTIC; work.material=mdf; hold.method=glue-block",
    "BOWL; hold.method=faceplate-screws",
    "PLASTIC; hold.method=faceplate-screws; work.material=plywood",
    "PLASTIC; hold.method=faceplate-screws; work.material=canvas phenolic",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
