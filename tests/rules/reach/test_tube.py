"""What holds a tube or a drilled pen."""

import pytest

from tests.rules.bench import fired

RULE = "tube"
FIRES = [
    "PEN",
]
QUIET = [
    "SPINDLE",
    "BOWL",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
