"""The further numbers of a figure, by name, value and unit, against the formulas they are taken from, done by hand."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from advisor.figure import Figure, reckon
from advisor.physics import balance, burst, cutting, drive, glue, slender, tail, teeth

HIGH = 1000 * math.tau / 60  # rad/s at 1000 rpm
SPUR = {
    "thrust": 1000.0,
    "teeth": 4.0,
    "inner_radius": 5.0,
    "outer_radius": 12.5,
    "face_angle": 30.0,
    "back_angle": 40.0,
    "parallel": 54.0,
    "perpendicular": 10.1,
}


def bearing(flank: float) -> float:
    """1.3 times Hankinson between 54 and 1.5·10.1 MPa at 90° less the flank; (tan β + µ) of it."""
    along, across, turn = 54.0, 1.5 * 10.1, math.radians(90 - flank)
    strength = along * across / (along * math.sin(turn) ** 2 + across * math.cos(turn) ** 2)
    return 1.3 * strength * (math.tan(math.radians(flank)) + 0.35)


ENTRY = bearing(30) + bearing(40)
SUNK = 0.9 * 1000 / (4 * 7.5 * ENTRY)
RIDE = 1 / math.tan(math.radians(30) - math.atan(0.35))
LOW = max(1.5 * 10.1 / ENTRY, 0.20)
DISC = {"density": 700.0, "diameter": 300.0, "rpm": 1000.0, "poisson": 0.4}

PARTS: list[tuple[Callable[[], Figure], dict[str, tuple[float, str]]]] = [
    (lambda: balance.unbalance_force.figure(10, 10, 1000), {"angular_speed": (HIGH, "rad/s")}),
    (lambda: balance.balance_grade.figure(10, 1000), {"angular_speed": (HIGH, "rad/s")}),
    (lambda: balance.permissible_offset.figure(6.3, 1000), {"angular_speed": (HIGH, "rad/s")}),
    (lambda: drive.dead_center_heat.figure(0.3, 500, 3, 30, 1000), {"angular_speed": (HIGH, "rad/s")}),
    (
        lambda: burst.disc_stress.figure(**DISC),
        {"angular_speed": (HIGH, "rad/s"), "mean_stress": (700 * HIGH**2 * 0.150**2 / 3 / 1000, "kPa")},
    ),
    (
        lambda: burst.disc_stress.figure(**DISC, bore=100.0),
        {
            "angular_speed": (HIGH, "rad/s"),
            "mean_stress": (700 * HIGH**2 * (0.150**2 + 0.150 * 0.050 + 0.050**2) / 3 / 1000, "kPa"),
        },
    ),
    (lambda: cutting.plastic_cutting_force.figure("acetal", 1.4, 0.14), {"specific_force": (100, "N/mm²")}),
    (
        lambda: cutting.wood_cutting_force.figure(6, 0.2, 650, "along"),
        {"mode_factor": (1, ""), "moisture_factor": (1, ""), "rake_factor": (1, "")},
    ),
    (lambda: drive.ring_drive_torque.figure(0.3, 900, 14), {}),
    (
        lambda: drive.ring_drive_torque.figure(0.3, 900, 14, 5),
        {"mean_radius": (2 / 3 * (14**3 - 5**3) / (14**2 - 5**2), "mm")},
    ),
    (
        lambda: drive.required_thrust.figure(100, 50, 1, 1, 0.9, 0.8, 10, 0.5, 1.0, 30),
        {"tail_drag": (0.5 * 1.0 / math.sin(math.radians(30)), "mm")},
    ),
    (lambda: drive.required_thrust.figure(100, 50, 1, 1, 0.9, 0.8, 10), {"tail_drag": (0, "mm")}),
    (
        lambda: glue.jam_fit.figure(0.1, 80, 120, 0.8, 10, 0.3),
        {
            "pressure": (0.8e3 * 0.1 / 160 * (1 - 4 / 9), "MPa"),
            "grip": (0.8e3 * 0.1 / 160 * (1 - 4 / 9) * math.pi * 80 * 10, "N"),
            "hoop_tension": (0.8e3 * 0.1 / 160 * (1 - 4 / 9) * (9 + 4) / (9 - 4), "MPa"),
        },
    ),
    (
        lambda: teeth.tooth_penetration.figure(**SPUR),
        {"tooth_length": (7.5, "mm"), "entry_resistance": (ENTRY, "MPa")},
    ),
    (
        lambda: teeth.tooth_slip_torque.figure(**SPUR),
        {
            "penetration": (SUNK, "mm"),
            "bite_torque": (4 * 1.5 * 10.1 * 7.5 * SUNK * 8.75 / 1000, "N·m"),
            "mean_radius": (8.75, "mm"),
            "grip_low": (LOW, ""),
            "grip_best": (min(2 * LOW, RIDE, 1.5), ""),
            "grip_ride": (RIDE, ""),
        },
    ),
    (
        lambda: teeth.tooth_slip_torque.figure(**SPUR, share=0.45),
        {
            "penetration": (SUNK / 2, "mm"),
            "bite_torque": (4 * 1.5 * 10.1 * 7.5 * SUNK / 2 * 8.75 / 1000, "N·m"),
            "mean_radius": (8.75, "mm"),
            "grip_low": (LOW, ""),
            "grip_best": (min(2 * LOW, RIDE, 1.5), ""),
            "grip_ride": (RIDE, ""),
        },
    ),
    (
        lambda: slender.whirl_speed.figure(25, 900, 12.6, 705, "pinned-pinned"),
        {
            "end_number": (math.pi**2, ""),
            "true_buckling_force": (math.pi**2 * 12600 * math.pi * 25**4 / 64 / 900**2, "N"),
        },
    ),
    (
        lambda: slender.deflection.figure(100, 25, 900, 12.6, "pinned-pinned"),
        {
            "second_moment": (math.pi * 25**4 / 64, "mm⁴"),
            "shear_share": (slender.shear_fraction(900, 25, "pinned-pinned"), ""),
        },
    ),
    (
        lambda: tail.cone_sink.figure(1000, 54, 30),
        {"contact_diameter": (math.sqrt(4 * 1000 / (math.pi * 54)), "mm")},
    ),
]


@pytest.mark.parametrize(("figure", "parts"), PARTS, ids=[" ".join(parts) or "none" for _, parts in PARTS])
def test_further_numbers(figure: Callable[[], Figure], parts: dict[str, tuple[float, str]]) -> None:
    also = figure().also
    assert {name: unit for name, (_, unit) in also.items()} == {name: unit for name, (_, unit) in parts.items()}
    assert [value for value, _ in also.values()] == pytest.approx([parts[name][0] for name in also], rel=5e-4)


@pytest.mark.parametrize(("place", "direction"), [(0, 0), (3, 90), (6, 180), (9, 270), (11, 330)])
def test_heavy_side_lies_where_the_bump_is(place: int, direction: float) -> None:
    radii = [50.0] * 12
    radii[place] = 60.0
    (name, (found, unit)), *others = balance.offset_from_radii.figure(radii).also.items()
    assert (name, unit, others) == ("direction", "°", [])
    assert 0 <= found <= 360
    assert math.cos(math.radians(found - direction)) == pytest.approx(1, abs=1e-12)


def test_equation_is_that_of_the_inputs() -> None:
    def screw(**words: str) -> str:
        return reckon("screw-withdrawal", {"gravity": "0.6", "diameter": "5mm", "thread": "25mm", **words}).equation

    assert screw(kind="wood", fiber="side") == "108.25·G²·D·L"
    assert screw(kind="wood", fiber="end") == "0.75·108.25·G²·D·L"
    assert screw(kind="lag", fiber="side") == "125.4·G^1.5·D^0.75·L"
    assert screw(kind="lag", fiber="end") == "0.75·125.4·G^1.5·D^0.75·L"
    assert burst.disc_stress.figure(**DISC).equation == "(3 + ν)/8·ρ·ω²·(D/2)²"
    assert "(d/2)²" in burst.disc_stress.figure(**DISC, bore=10.0).equation
