"""Self-holding tapers of lathe spindles against the plug dimensions of the standards (ISO 296, ASME B5.10; memory).

The standard prints each plug's diameters at the gauge line and at the small end and the length between them: the taper
is their difference over the length, and must be the one of the table of this program.
"""

from __future__ import annotations

from math import atan, degrees

import pytest

from advisor.centers.metals import taper
from advisor.physics import drive

SOURCES = ("statics", "memory")
# number: (gauge diameter, small end of the plug, plug depth) in inches; gauge diameter in mm as ISO 296 prints it
PLUGS = {
    0: (0.3561, 0.252, 2.0, 9.045),
    1: (0.475, 0.369, 2.125, 12.065),
    2: (0.700, 0.572, 2.5625, 17.780),
    3: (0.938, 0.778, 3.1875, 23.825),
    4: (1.231, 1.020, 4.0625, 31.267),
    5: (1.748, 1.475, 5.1875, 44.399),
}


@pytest.mark.parametrize("number", PLUGS)
def test_gauge_diameter_in_inches_and_in_millimeters(number: int) -> None:
    gauge, _, _, metric = PLUGS[number]
    assert taper(number).large_diameter == pytest.approx(metric)
    assert taper(number).large_diameter == pytest.approx(gauge * 25.4, abs=2e-3)


@pytest.mark.parametrize("number", PLUGS)
def test_half_angle_from_the_two_ends_of_the_plug(number: int) -> None:
    gauge, small, depth, _ = PLUGS[number]
    assert taper(number).half_angle == pytest.approx(degrees(atan((gauge - small) / 2 / depth)), rel=1e-3)


@pytest.mark.parametrize("number", PLUGS)
def test_what_running_thrust_alone_carries(number: int) -> None:
    """F·µ·r/(sin α + µ·cos α) at the middle of the plug, low friction: less than 2.5 N·m at 300 N up to number 2."""
    gauge, small, _, _ = PLUGS[number]
    middle = (gauge + small) / 4 * 25.4
    low = drive.number_taper_torque(number, 300.0)
    assert low < 0.2 * 300 * middle / 1000 / (0.0249 + 0.1)
    assert number > 2 or low < 2.5
