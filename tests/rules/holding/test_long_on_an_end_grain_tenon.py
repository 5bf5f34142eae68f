"""More than four tenon diameters out of an end-grain tenon levers out."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-an-end-grain-tenon"
FIRES = [
    "HOLLOW; hold.kit=[jaws-on-tenon]; hold.tenon.diameter=40mm; work.length=300mm",
]
QUIET = [
    "HOLLOW; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
