"""A drill chuck on a plain taper walks out."""

import pytest

from tests.rules.bench import fired

RULE = "drill-chuck-walks-out"
FIRES = [
    "ROD; work.diameter=10mm; hold.method=drill-chuck",
]
QUIET = [
    "ROD; work.diameter=10mm; hold.method=drill-chuck; machine.drawbar=yes",
    "ROD; work.diameter=10mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
