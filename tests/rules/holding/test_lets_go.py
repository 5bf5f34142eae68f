"""A hold that the cut overpowers is refused."""

import pytest

from tests.rules.bench import fired

RULE = "lets-go"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=15mm; cut.force=400N",
    "BOWL; hold.method=rubber-button-jaws",
    "HOLLOW; hold.method=glue-block; work.length=300mm",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws",
    "SPINDLE; work.material=treated pine",
    "SPINDLE; hold.method=glue-block",
    "HOLLOW; hold.method=jam-chuck; work.state=finished",
    "BOWL; hold.tenon.diameter=15mm; cut.force=400N; hold.method=cup-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
