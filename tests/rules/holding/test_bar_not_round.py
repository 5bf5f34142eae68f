"""A bar through the bore must be round."""

import pytest

from tests.rules.bench import fired

RULE = "bar-not-round"
FIRES = [
    "SPINDLE; hold.method=through-spindle",
    "SPINDLE@through-spindle; machine.spindle_bore=90mm",
]
QUIET = [
    "ROD@through-spindle",
    "SPINDLE@through-spindle; work.state=round",
    "SPINDLE@long-jaws",
    "SPINDLE; hold.method=through-spindle; work.form=round",
    "SPINDLE; hold.method=through-spindle; work.form=tube",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
