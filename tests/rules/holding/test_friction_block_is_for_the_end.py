"""A friction block holds only round, light work."""

import pytest

from tests.rules.bench import fired

RULE = "friction-block-is-for-the-end"
FIRES = [
    "BOWL; hold.method=friction-block",
]
QUIET = [
    "BOWL; hold.method=friction-block; work.state=finished",
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
