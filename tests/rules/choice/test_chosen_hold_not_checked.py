"""The chosen hold could not be checked."""

import pytest

from tests.rules.bench import fired

RULE = "chosen-hold-not-checked"
FIRES = [
    "BOWL; work.material=flubberwood; hold.method=jaws-on-tenon",
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
