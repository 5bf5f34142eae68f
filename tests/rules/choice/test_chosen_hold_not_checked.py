"""The chosen hold could not be checked."""

import pytest

from tests.rules.bench import advice, fired

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


def test_it_says_what_is_missing() -> None:
    found = advice("ROD; hold.method=through-spindle")
    said = next(ruling.text for ruling in found.rulings if ruling.rule.name == RULE)
    assert "bore of the spindle was not given" in said
