"""More than three tenon diameters out of a side-grain tenon levers off."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-a-side-grain-tenon"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=60mm; work.length=220mm; cut.operation=hollowing; work.state=round",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=60mm; cut.operation=hollowing; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
