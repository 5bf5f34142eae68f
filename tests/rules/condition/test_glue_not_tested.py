"""A glue joint nobody tested may be no joint."""

import pytest

from tests.rules.bench import fired

RULE = "glue-not-tested"
FIRES = [
    "BOWL; work.condition=[untested-glue]",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.condition=[glued-joint]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
