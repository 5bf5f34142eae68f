"""A free-running screw makes more of the same torque."""

import pytest

from tests.rules.bench import fired

RULE = "wheel-may-be-too-tight"
FIRES = [
    "SPINDLE; machine.handwheel_lead=4mm; hold.handwheel_torque=4.5Nm",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; machine.handwheel_lead=4mm; hold.handwheel_torque=2Nm",
    "SPINDLE; machine.handwheel_lead=4mm; hold.handwheel_torque=10Nm",
    "SPINDLE; machine.handwheel_lead=4mm; hold.handwheel_torque=3Nm",
    "SPINDLE; machine.handwheel_lead=4mm; hold.handwheel_torque=5.5Nm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
