"""A long piece without the tailstock levers out of its hold."""

import pytest

from tests.rules.bench import fired

RULE = "stands-out-alone"
TALL = "SPINDLE; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.length=14in"
FIRES = [
    TALL,
    "SPINDLE; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.length=10in",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.length=8in",
    f"{TALL}; hold.steady.position=200mm",
    "SPINDLE; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.diameter=2in; "
    "work.grain=diagonal",
    "SPINDLE; hold.method=jaws-on-tenon; cut.operation=hollowing; work.state=round; work.form=round; "
    "work.diameter=60mm; work.length=240mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
