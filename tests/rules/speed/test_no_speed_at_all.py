"""A ceiling this low means there is no safe speed."""

import pytest

from tests.rules.bench import fired

RULE = "no-speed-at-all"
FIRES = [
    "BOWL; work.offset=100mm; machine.mass=20kg; work.mass=30kg",
    "BOWL; machine.mass=20kg; work.mass=30kg; work.offset=80mm",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "ROD",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
