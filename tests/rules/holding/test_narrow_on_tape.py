"""Work taller than a quarter of the tape peels off."""

import pytest

from tests.rules.bench import fired

RULE = "narrow-on-tape"
FIRES = [
    "DISC; hold.method=double-sided-tape; work.diameter=50mm; work.length=18mm",
    "DISC; hold.method=double-sided-tape; work.diameter=50mm; work.length=20mm",
    "DISC; hold.method=double-sided-tape; work.diameter=50mm; work.length=14mm",
]
QUIET = [
    "DISC; hold.method=double-sided-tape",
    "DISC; hold.method=double-sided-tape; work.diameter=50mm; work.length=22mm",
    "DISC; work.diameter=50mm; work.length=18mm; hold.method=jaws-on-tenon",
    "DISC; hold.method=double-sided-tape; work.diameter=50mm; work.length=11mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
