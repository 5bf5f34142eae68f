"""What holds off-center work."""

import pytest

from tests.rules.bench import fired

RULE = "off-center"
FIRES = [
    "BOWL; work.offset=40mm",
    "BOWL; work.offset=30mm",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.offset=25mm",
    "BOWL; work.diameter=10in; work.offset=25.4mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
