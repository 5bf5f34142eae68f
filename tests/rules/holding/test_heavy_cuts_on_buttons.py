"""Rubber buttons take finishing cuts."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-cuts-on-buttons"
FIRES = [
    "BOWL; hold.method=rubber-button-jaws; work.state=round",
    "BOWL; hold.method=rubber-button-jaws",
    "BOWL; work.state=round; hold.method=sphere-cups",
    "BOWL; work.state=round; hold.method=ring-clamp-plate",
    "BOWL; hold.method=rubber-button-jaws; work.state=round; cut.operation=hollowing",
]
QUIET = [
    "BOWL; hold.method=rubber-button-jaws; work.state=finished",
    "BOWL; work.state=round; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
