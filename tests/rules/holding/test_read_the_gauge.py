"""Suction without a gauge reading is hope."""

import pytest

from tests.rules.bench import fired

RULE = "read-the-gauge"
FIRES = [
    "BOWL; hold.method=vacuum; work.state=finished",
]
QUIET = [
    "BOWL; hold.method=vacuum; work.state=finished; hold.vacuum.gauge=22inHg",
    "BOWL; work.state=finished; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
