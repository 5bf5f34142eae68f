"""Cutting speeds of metal: a 1914 treatise, shop rules, and sums of friction published for wood on steel.

Compared: `spindle-speed`, `cutting-speed`, `rim-rule-speed`, `cutting-power`.
"""

from __future__ import annotations

import math

import pytest

from advisor.centers.metals import SPEEDS
from advisor.data.tables import load
from advisor.physics import cutting, metal, rim

SOURCES = ("turning-and-boring-1914", "kinematics", "to-1-1a-9", "hss-speed-table", "tm-1-420")
FOOT = 0.3048
INCH = 25.4


def test_example_of_the_treatise() -> None:
    """Turning and Boring, 1914: 60 ft/min on 5 in of diameter, about 46 revolutions."""
    assert metal.spindle_speed(cutting_speed=60 * FOOT, diameter=5 * INCH) == pytest.approx(46, abs=0.5)


@pytest.mark.parametrize(("feet", "inches"), [(100, 1.0), (80, 0.75), (250, 3.0)])
def test_shop_rule(feet: float, inches: float) -> None:
    """3.82·V/D in feet per minute and inches."""
    found = metal.spindle_speed(cutting_speed=feet * FOOT, diameter=inches * INCH)
    assert found == pytest.approx(3.82 * feet / inches, rel=1e-3)


def test_speed_of_the_surface_and_back() -> None:
    assert metal.cutting_speed(diameter=40, rpm=metal.spindle_speed(cutting_speed=33, diameter=40)) == pytest.approx(33)


def test_trade_bands_are_rim_speeds() -> None:
    """6000 and 9000 inch·rpm are 1571 and 2356 ft/min at the rim, whatever the diameter."""
    for diameter in (100.0, 254.0, 450.0):
        for band, feet in ((6000, 1571), (9000, 2356)):
            rpm = rim.rim_rule_speed(diameter=diameter, band=band)
            assert rim.rim_speed(diameter=diameter, rpm=rpm) * 60 / FOOT == pytest.approx(feet, rel=5e-4)


def test_power_is_force_times_speed() -> None:
    speed = metal.cutting_speed(diameter=150, rpm=1000) / 60
    assert cutting.cutting_power(force=60, diameter=150, rpm=1000) == pytest.approx(60 * speed)


def test_chip_keeps_its_area_whatever_the_edge_angle() -> None:
    for angle in (30, 45, 60, 90):
        area = cutting.chip_width(1.2, angle) * cutting.chip_thickness(0.2, angle)
        assert area == pytest.approx(1.2 * 0.2)
    assert cutting.chip_width(1.0, 90) == pytest.approx(1.0)
    assert math.isclose(cutting.chip_thickness(0.3, 90), 0.3)


ROWS = {row.text("metal"): row for row in load(SPEEDS)}
# T.O. 1-1A-9, table 2-8: ft/min finishing with high-speed steel, and with carbide
TURNING = {"303": ((65, 105), (175, 350)), "304": ((50, 80), (150, 300))}
# Handbook table of high-speed steel: drilling and reaming, annealed
DRILLING = {
    "303": (85, 55), "304": (55, 35), "12L14": (120, 80), "1045": (75, 50), "O1": (45, 30),
}  # fmt: skip


@pytest.mark.parametrize("name", TURNING)
def test_stainless_is_turned_at_the_printed_speeds(name: str) -> None:
    row, (steel, carbide) = ROWS[name], TURNING[name]
    assert (row.number("turn_steel_low"), row.number("turn_steel_high")) == steel
    assert (row.number("turn_carbide_low"), row.number("turn_carbide_high")) == carbide


@pytest.mark.parametrize("name", DRILLING)
def test_drills_and_reamers_run_at_the_printed_speeds(name: str) -> None:
    row = ROWS[name]
    assert (row.number("drill_low"), row.number("ream_low")) == DRILLING[name]


@pytest.mark.parametrize("name", DRILLING)
def test_reaming_lies_between_the_manuals_half_and_the_handbook_s_two_thirds(name: str) -> None:
    """TM 1-420: approximately one half; the handbook rows print 0.64 to 0.67. The advised half is never above a row."""
    row = ROWS[name]
    for end in ("low", "high"):
        assert 0.63 < row.number(f"ream_{end}") / row.number(f"drill_{end}") < metal.REAM_SHARE_HIGH + 0.02
    assert metal.REAM_SHARE == 0.5
