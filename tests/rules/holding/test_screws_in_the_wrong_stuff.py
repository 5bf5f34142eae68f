"""Wood screws and spurs do not hold in plastic, laminate, resin, stone or horn."""

import pytest

from tests.rules.bench import fired

RULE = "screws-in-the-wrong-stuff"
FIRES = [
    "PLASTIC; hold.method=spur-drive",
    "PLASTIC; hold.method=faceplate-screws",
    "PLASTIC; hold.method=toothed-ring-drive",
    "PLASTIC; hold.method=two-spur-drive",
    "PLASTIC; hold.method=screw-chuck",
    "PLASTIC; hold.method=spur-drive; work.material=aluminum",
    "PLASTIC; hold.method=spur-drive; work.material=canvas phenolic",
    "PLASTIC; hold.method=spur-drive; work.material=pencils in resin",
    "PLASTIC; hold.method=spur-drive; work.material=bone",
    "PLASTIC; hold.method=spur-drive; work.material=soapstone",
    "PLASTIC; hold.method=spur-drive; work.material=epoxy casting",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws",
    "PLASTIC; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
