"""What holds a finished piece while its foot is cleared."""

import pytest

from tests.rules.bench import fired

RULE = "foot-to-clear"
FIRES = [
    "BOWL; work.state=finished",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.state=finished; work.grain=along",
    "BOWL; work.state=finished; cut.operation=hollowing",
    "BOWL; work.state=finished; work.condition=[live-edge]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
