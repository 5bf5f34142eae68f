"""Sizes no shop has, each within its own limits: an answer or a clear error, never a fault of the program."""

import pytest

from advisor.reading import InputFault, read_case
from tests.rules.bench import words_of
from tests.whole.answers import answer, of

ANSWERED = [
    "SPINDLE; hold.drive.shank_taper=7",
    "SPINDLE; machine.spindle_taper=7",
    "SPINDLE; work.diameter=3000mm",
    "SPINDLE; hold.slip_test.torque=20000 N-m; hold.slip_test.thrust=0.1 N",
    "SPINDLE; hold.slip_test.torque=0.01 N-m; hold.slip_test.thrust=200000 N",
    "SPINDLE; work.balance_test.weight=2000 kg; work.balance_test.radius=300mm",
    "SPINDLE; hold.drive.outer_diameter=0.1mm; hold.drive.shank_taper=2; cut.force=20000 N",
    "SPINDLE; hold.drive.inner_diameter=70mm",
    "SPINDLE; hold.drive.inner_diameter=70mm; hold.drive.kind=cup",
    "SPINDLE; hold.drive.inner_diameter=70mm; hold.drive.kind=point",
]


@pytest.mark.parametrize("text", ANSWERED)
def test_it_is_answered(text: str) -> None:
    assert of(text)["verdict"]


def test_a_drive_with_many_teeth_is_a_ring() -> None:
    found = of("SPINDLE; hold.drive.teeth=24")
    assert found["holding"][0]["method"] == "toothed-ring-drive"
    assert of("SPINDLE; hold.drive.teeth=6")["holding"][0]["method"] == "spur-drive"
    assert of("SPINDLE; hold.drive.teeth=24; hold.drive.kind=toothed")["holding"][0]["method"] == "spur-drive"


def test_teeth_that_begin_farther_out_than_the_advised_drive_reach_round_them() -> None:
    assumed = {entry["field"]: entry["value"] for entry in of("SPINDLE; hold.drive.inner_diameter=60mm")["assumed"]}
    assert float(assumed["hold.drive.outer_diameter"].split()[0]) > 60


def test_a_drive_that_touches_nothing_is_refused() -> None:
    with pytest.raises(InputFault, match=r"inner_diameter is not smaller than work\.diameter"):
        read_case(None, [*words_of("SPINDLE"), "hold.drive.inner_diameter=3000mm"])


def test_a_center_of_mass_stays_inside_the_work() -> None:
    words = ["work.balance_test.weight=90 kg", "work.balance_test.radius=300mm", "work.mass=1kg"]
    found = answer([*words_of("SPINDLE; work.diameter=100mm"), *words])
    assert found["speed"]["balance"]["offset_mm"] == pytest.approx(50)


def test_a_slip_test_beyond_belief_needs_no_less_thrust_than_ten_times_less_would() -> None:
    needed = [
        of(f"SPINDLE; hold.slip_test.torque={torque} N-m; hold.slip_test.thrust=10 N")["thrust"]["needed_n"]
        for torque in (5, 20_000)
    ]
    assert needed[1] == pytest.approx(needed[0])
