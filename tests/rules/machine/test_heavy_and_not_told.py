"""Work above 20 kg asks for the machine's own numbers first."""

import pytest

from tests.rules.bench import fired
from tests.whole.answers import of

RULE = "heavy-and-not-told"
FIRES = [
    "BOWL; work.mass=25kg",
    "BOWL; work.mass=25kg; machine.min_rpm=50; machine.mass=900kg",
]
QUIET = [
    "BOWL",
    "SPINDLE",
    "BOWL; work.mass=25kg; machine.swing=30in; machine.min_rpm=50; machine.mass=900kg",
    "BOWL; work.mass=20kg",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)


def test_only_what_is_missing_is_asked_for() -> None:
    heavy = "BOWL; work.mass=25kg"
    reasons = of(f"{heavy}; machine.min_rpm=50; machine.mass=900kg")["reasons"]
    asked = [reason for reason in reasons if reason["rule"] == RULE]
    assert asked[0]["text"] == "25 kg (55 lb) on a lathe of which nobody said the swing."
    assert asked[0]["do"].startswith("Give machine.swing: ")
