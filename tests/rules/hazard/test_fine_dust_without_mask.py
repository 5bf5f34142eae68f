"""Fine dust and a bare face."""

import pytest

from tests.rules.bench import fired

RULE = "fine-dust-without-mask"
FIRES = [
    "PLASTIC; work.material=canvas phenolic; person.respirator=none",
    "SPINDLE; work.condition=[spalted]; person.respirator=none",
]
QUIET = [
    "PLASTIC; person.respirator=none",
    "PLASTIC; work.material=canvas phenolic",
    "SPINDLE; person.respirator=none",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
