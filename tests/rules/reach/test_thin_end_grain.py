"""What holds end-grain work to 25 mm."""

import pytest

from tests.rules.bench import fired

RULE = "thin-end-grain"
FIRES = [
    "SPINDLE; work.diameter=20mm",
    "SPINDLE; work.diameter=25mm",
    "SPINDLE; work.diameter=20mm; work.grain=diagonal",
    "SPINDLE; work.diameter=20mm; work.grain=none",
]
QUIET = [
    "SPINDLE",
    "BOWL",
    "SPINDLE; work.diameter=26mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
