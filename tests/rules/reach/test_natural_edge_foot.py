"""What holds a finished natural edge while its foot is cleared."""

import pytest

from tests.rules.bench import fired

RULE = "natural-edge-foot"
FIRES = [
    "BOWL; work.state=finished; work.condition=[live-edge]",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "BOWL; work.condition=[live-edge]",
    "BOWL; work.state=finished; work.condition=[live-edge]; work.grain=along",
    "BOWL; work.state=finished; cut.operation=hollowing",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
