"""A blank close to the swing may strike as it moves."""

import pytest

from tests.rules.bench import fired

RULE = "grazes-the-bed"
FIRES = [
    "BOWL; machine.swing=10.2in",
    "BOWL; machine.swing=10in",
]
QUIET = [
    "BOWL",
    "BOWL; machine.swing=12in",
    "BOWL; machine.swing=9in",
    "BOWL; machine.swing=20in; work.diameter=19in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
