"""Quick glue does not hold on wet wood."""

import pytest

from tests.rules.bench import fired

RULE = "thin-glue-on-wet-wood"
FIRES = [
    "BOWL; hold.method=glue-block; work.moisture=green; hold.glue.kind=cyanoacrylate",
    "BOWL; work.moisture=green; hold.glue.kind=cyanoacrylate; hold.method=double-sided-tape",
    "BOWL; work.moisture=green; hold.glue.kind=cyanoacrylate; hold.method=paper-joint",
    "BOWL; work.moisture=green; hold.glue.kind=cyanoacrylate; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "BOWL; hold.method=glue-block; work.moisture=green; hold.glue.kind=polyurethane",
    "BOWL; work.moisture=green; hold.glue.kind=cyanoacrylate; hold.method=jaws-on-tenon",
    "BOWL; hold.method=glue-block; hold.glue.kind=cyanoacrylate; work.moisture=dry",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
