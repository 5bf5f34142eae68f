"""ISO 2533 Standard Atmosphere: pressures of its table at geopotential altitudes, kPa.

Compared: `air-pressure`.
"""

from __future__ import annotations

import pytest

from advisor.physics import vacuum

SOURCES = ("iso-2533",)
TABLE = [
    (0, 101.325),
    (500, 95.4608),
    (1000, 89.8745),
    (2000, 79.4952),
    (3000, 70.1085),
    (5000, 54.0199),
    (8000, 35.5998),
    (10000, 26.4362),
]


@pytest.mark.parametrize(("altitude", "pressure"), TABLE)
def test_pressure_of_the_table(altitude: float, pressure: float) -> None:
    assert vacuum.air_pressure(altitude=altitude) == pytest.approx(pressure, rel=2e-4)
