"""Spurs in a small or soft end carry light cuts."""

import pytest

from tests.rules.bench import fired
from tests.whole.answers import of

RULE = "light-cuts-on-spurs"
THIN_SQUARE = "SPINDLE; work.material=white oak; work.diameter=1in; work.length=8in; hold.method=spur-drive"
FIRES = [
    THIN_SQUARE,
    "SPINDLE; work.material=white oak; work.length=8in; hold.method=spur-drive; work.diameter=0.7in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    f"{THIN_SQUARE}; cut.force=60N",
    "BOWL; hold.method=spur-drive",
    "BOWL; hold.method=jaws-on-tenon",
    "SPINDLE; work.material=white oak; work.diameter=1in; work.length=8in; hold.method=two-spur-drive",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)


def test_a_thin_square_is_turned_between_centers_with_light_cuts() -> None:
    """An everyday hold (common practice, no source): never told to take a ring, which does not rough squares."""
    answer = of(THIN_SQUARE)
    assert answer["verdict"] == "go-with-care"
    assert answer["thrust"]["window"] == "narrow"
    used = next(hold for hold in answer["holding"] if hold["method"] == "spur-drive")
    assert used["verdict"] == "with-care"
