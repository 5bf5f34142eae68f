"""The drive center: advised sizes, what its teeth carry and how deep they go."""

from __future__ import annotations

import pytest

from advisor.reckoning.defects import defect_share, slope_share
from advisor.reckoning.drives import drive_for, seat_depth, tooth_bearing
from tests.reckoning.holds.hold_bench import BOWL, ROD, Section, job

WORKED: Section = {"drive": {"teeth": 4, "outer_diameter": 25.0, "inner_diameter": 10.0}}
BIG: Section = {**ROD, "diameter": 76.0, "length": 300.0}


@pytest.mark.parametrize(
    ("work", "method", "outer", "inner"),
    [
        ({**ROD, "diameter": 25.0}, "spur-drive", 12.5, 5.0),
        ({**ROD, "diameter": 100.0}, "spur-drive", 38.0, 15.2),
        ({**ROD, "diameter": 130.0}, "spur-drive", 130 / 3, 130 / 3 * 0.4),
        ({**ROD, "diameter": 300.0}, "spur-drive", 50.0, 20.0),
        (BOWL, "spur-drive", 50.0, 20.0),
        ({**BOWL, "diameter": 120.0}, "spur-drive", 30.0, 12.0),
        (BOWL, "two-spur-drive", 50.0, 15.0),
        ({**ROD, "diameter": 80.0}, "two-spur-drive", 40.0, 12.0),
        ({**ROD, "diameter": 40.0}, "toothed-ring-drive", 24.0, 20.4),
        ({**ROD, "diameter": 90.0}, "toothed-ring-drive", 32.0, 27.2),
        ({**ROD, "diameter": 30.0}, "cup-drive", 18.0, 15.3),
        ({**ROD, "diameter": 90.0}, "cup-drive", 25.0, 21.25),
    ],
)
def test_advised_sizes(work: Section, method: str, outer: float, inner: float) -> None:
    drive = drive_for(job(work), method)
    assert drive is not None
    assert (drive.outer, drive.inner) == pytest.approx((outer, inner))
    assert drive.mean_radius == pytest.approx((outer + inner) / 4)
    assert {entry.field for entry in drive.assumed} >= {"hold.drive.outer_diameter", "hold.drive.inner_diameter"}


def test_worked_bearing_of_seated_teeth() -> None:
    # 4 teeth of 7.5 mm at 8.75 mm, 3 mm deep, f90 10.1 MPa: 11.9 N·m
    situation = job(BIG, WORKED)
    drive = drive_for(situation, "spur-drive")
    assert drive is not None
    assert tooth_bearing(situation, drive, 3.0, 10.1) == pytest.approx(11.9, abs=0.05)
    assert not {"hold.drive.outer_diameter"} & {entry.field for entry in drive.assumed}


def test_side_grain_bears_half_across_and_half_along() -> None:
    situation = job(BOWL)
    drive = drive_for(situation, "two-spur-drive")
    assert drive is not None
    # one tooth at 15 MPa, one at 30
    assert tooth_bearing(situation, drive, 6.0, 10.0) == pytest.approx(2 * 22.5 * 17.5 * 6 * 16.25e-3)


@pytest.mark.parametrize(
    ("work", "hold", "torque", "advised", "most"),
    [
        # d = SF·T/(N·k_u·f90·L·r_m) with f90 10.14 MPa: 1.5 × 10 / 3.99
        (BIG, WORKED, 10.0, 3.76, 6.0),
        (BIG, WORKED, 0.5, 2.0, 6.0),
        (BIG, WORKED, 100.0, 6.0, 6.0),
        (BIG, {"drive": {**WORKED["drive"], "tooth_height": 5.0}}, 100.0, 4.0, 4.0),
        ({**BIG, "diameter": 25.0}, {}, 100.0, 5.0, 5.0),
        ({**BIG, "diameter": 25.0, "condition": ["check"]}, {}, 100.0, 2.5, 2.5),
        ({**BIG, "diameter": 8.0}, {}, 0.01, 1.6, 1.6),
    ],
)
def test_seat_depth(work: Section, hold: Section, torque: float, advised: float, most: float) -> None:
    situation = job(work, hold)
    drive = drive_for(situation, "spur-drive")
    assert drive is not None
    assert seat_depth(situation, drive, torque, 1.5) == pytest.approx((advised, most), rel=0.005)


def test_two_large_spurs_in_side_grain_go_deeper() -> None:
    situation = job(BOWL)
    for method, most in (("two-spur-drive", 10.0), ("spur-drive", 6.0)):
        drive = drive_for(situation, method)
        assert drive is not None
        assert seat_depth(situation, drive, 1000.0, 1.5) == (most, most)


@pytest.mark.parametrize(
    ("given", "chosen", "method", "kind", "own"),
    [
        ({"kind": "toothed", "teeth": 2, "outer_diameter": 30.0}, None, "two-spur-drive", "two", True),
        ({"kind": "toothed", "teeth": 2, "outer_diameter": 30.0}, None, "spur-drive", "four", False),
        ({"kind": "cup", "outer_diameter": 20.0}, None, "cup-drive", "cup", True),
        ({"kind": "cup", "outer_diameter": 20.0}, None, "spur-drive", "four", False),
        ({"kind": "cup", "outer_diameter": 20.0}, "spur-drive", "spur-drive", "cup", True),
        ({"outer_diameter": 20.0}, "cup-drive", "spur-drive", "four", False),
        ({"teeth": 4, "outer_diameter": 20.0}, None, "spur-drive", "four", True),
        ({"teeth": 4, "outer_diameter": 20.0}, None, "two-spur-drive", "two", False),
    ],
)
def test_whose_drive_it_is(given: Section, chosen: str | None, method: str, kind: str, own: bool) -> None:
    hold: Section = {"drive": given}
    if chosen is not None:
        hold["method"] = chosen
    drive = drive_for(job(BIG, hold), method)
    assert drive is not None
    assert (drive.kind, drive.given) == (kind, own)


def test_chisel_teeth_grip_better_than_blunt_ones() -> None:
    blunt = drive_for(job(BIG, {"drive": {"face_angle": 30.0, "back_angle": 30.0}}), "spur-drive")
    chisel = drive_for(job(BIG, {"drive": {"face_angle": 0.0, "back_angle": 32.0}}), "spur-drive")
    assert blunt is not None
    assert chisel is not None
    assert blunt.effective == (0.20, 0.35, 0.5, 0.75)
    assert chisel.effective == (0.30, 0.55, 0.8, 1.4)


def test_only_drives_that_bite_an_end_are_drives() -> None:
    assert drive_for(job(BIG), "jaws-on-tenon") is None
    assert drive_for(job(BIG), "friction-block") is None


@pytest.mark.parametrize(
    ("conditions", "share"),
    [
        (["sound"], 1.0),
        (["knot"], 0.7),
        (["pith", "check"], 0.56),
        (["crack", "ring-shake"], 0.7),
        (["spalted", "rot"], 0.3),
    ],
)
def test_defects_multiply_once_each(conditions: list[str], share: float) -> None:
    assert defect_share(job({**ROD, "condition": conditions})) == pytest.approx(share)


@pytest.mark.parametrize(("slope", "share"), [(None, 1.0), (20.0, 1.0), (10.0, 0.8), (5.0, 0.5), (2.5, 0.25)])
def test_slope_of_grain(slope: float | None, share: float) -> None:
    work = ROD if slope is None else {**ROD, "grain_slope": slope}
    assert slope_share(job(work)) == pytest.approx(share)
