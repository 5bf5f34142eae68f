"""Glue on a finished face leaves a film."""

import pytest

from tests.rules.bench import fired

RULE = "film-to-scrape-off"
FIRES = [
    "BOWL; work.state=finished; hold.method=glue-block",
    "BOWL; work.state=finished; hold.method=double-sided-tape",
    "BOWL; work.state=finished; hold.method=paper-joint",
    "BOWL; work.state=finished; hold.method=waste-block-faceplate",
]
QUIET = [
    "BOWL; hold.method=glue-block",
    "BOWL; work.state=finished; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
