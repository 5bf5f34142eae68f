"""What to set, at the handwheel and at its rim."""

import pytest

from tests.rules.bench import fired

RULE = "set-at-the-wheel"
FIRES = [
    "SPINDLE; machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm",
    "SPINDLE; hold.method=jaws-on-tenon; machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm",
    "SPINDLE; machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm; cut.force=50N",
    "SPINDLE; machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm; work.diameter=1.3in",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "THIN; machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm",
    "SPINDLE; machine.handwheel_lead=4mm",
    "SPINDLE; machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm; work.diameter=1in",
    "SPINDLE; work.material=basswood; work.diameter=60mm; cut.force=60N; hold.method=spur-drive; "
    "machine.handwheel_lead=4mm; machine.handwheel_diameter=120mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
