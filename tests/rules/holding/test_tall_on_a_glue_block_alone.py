"""Work taller than one and a half glued faces peels off without the tailstock."""

import pytest

from tests.rules.bench import fired

RULE = "tall-on-a-glue-block-alone"
FIRES = [
    "HOLLOW; hold.method=glue-block; work.length=300mm",
    "HOLLOW; work.length=300mm; hold.method=waste-block-faceplate",
    "HOLLOW; hold.method=glue-block; work.length=140mm",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "HOLLOW; hold.method=glue-block; work.length=110mm",
    "HOLLOW; work.length=300mm; hold.method=jaws-on-tenon",
    "HOLLOW; hold.method=glue-block; work.length=300mm; cut.operation=finishing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
