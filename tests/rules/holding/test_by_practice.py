"""Some holds are judged by practice alone."""

import pytest

from tests.rules.bench import fired

RULE = "by-practice"
FIRES = [
    "SPINDLE; hold.method=square-socket-drive; work.diameter=60mm",
]
QUIET = [
    "SPINDLE",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
