"""A small tenon without the tailstock is not advised."""

import pytest

from tests.rules.bench import fired

RULE = "tenon-small-and-alone"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm; cut.operation=hollowing; work.state=round",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=55mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
