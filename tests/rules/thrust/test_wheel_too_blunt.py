"""The window is narrower than a handwheel can be read."""

import pytest

from tests.rules.bench import fired
from tests.whole.answers import of

RULE = "wheel-too-blunt"
NARROW = "THIN; cut.force=5N; machine.handwheel_lead=4mm"
FIRES = [
    NARROW,
    f"{NARROW}; machine.handwheel_diameter=120mm",
    "THIN; machine.handwheel_lead=4mm; cut.force=5.5N",
]
QUIET = [
    "SPINDLE; machine.handwheel_lead=4mm",
    "THIN; machine.handwheel_lead=4mm",
    "SPINDLE",
    "THIN; machine.handwheel_lead=4mm; cut.force=4.5N",
    "THIN; machine.handwheel_lead=4mm; cut.force=7N",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)


def test_the_wheel_is_never_told_more_than_the_most() -> None:
    part = of(NARROW)["thrust"]
    assert part["set_n"] <= part["allowed_n"]
    assert part["handwheel_nm"] == part["handwheel_most_nm"]
