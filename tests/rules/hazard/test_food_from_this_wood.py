"""Food and toys from a sensitizing wood."""

import pytest

from tests.rules.bench import fired

RULE = "food-from-this-wood"
FIRES = [
    "SPINDLE; work.material=black walnut; work.use=food",
    "SPINDLE; work.material=yew; work.use=toy",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.use=food",
    "SPINDLE; work.material=black walnut",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
