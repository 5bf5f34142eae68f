"""Rubber buttons walk on a rough piece."""

import pytest

from tests.rules.bench import fired

RULE = "buttons-on-a-rough-piece"
FIRES = [
    "BOWL; hold.method=rubber-button-jaws",
]
QUIET = [
    "BOWL; hold.method=rubber-button-jaws; work.state=finished",
    "BOWL; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
