"""A screw chuck unscrews in reverse."""

import pytest

from tests.rules.bench import fired

RULE = "unscrews-in-reverse"
FIRES = [
    "BOWL; hold.method=screw-chuck; cut.rotation=reverse",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "BOWL; cut.rotation=reverse; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
