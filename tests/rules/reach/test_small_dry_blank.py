"""What holds a dry side-grain blank to 10 in."""

import pytest

from tests.rules.bench import fired

RULE = "small-dry-blank"
FIRES = [
    "BOWL",
]
QUIET = [
    "SPINDLE",
    "BOWL; work.diameter=12in",
    "BOWL; work.diameter=12in; work.material=ponderosa pine",
    "BOWL; work.state=round",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
