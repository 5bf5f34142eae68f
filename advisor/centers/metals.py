"""Speeds and growth of the metals a center is made of, and the self-holding tapers of lathe spindles."""

from __future__ import annotations

from math import atan, degrees, pi
from typing import NamedTuple

from advisor.centers.inputs import CenterInputError
from advisor.data.tables import Number, Row, Table, Text, load

SPEEDS = Table(
    "metal_speeds.csv",
    (
        Text("metal"),
        Text("title"),
        *(
            Number(f"{operation}_{end}", 10, 3000)
            for operation in ("turn_steel", "turn_carbide", "drill", "ream")
            for end in ("low", "high")
        ),
        Number("expansion", 1, 50),
        Text("source"),
    ),
    key=("metal",),
    rows=7,
)
TAPERS = Table(
    "center_tapers.csv",
    (Number("number", 0, 5), Number("large_diameter", 5, 60), Number("taper", 15, 25), Text("source")),
    key=("number",),
    rows=6,
)
M_PER_FOOT = 0.3048
LIGHT_LATHE = 0.7
"""Share of the table at which a light or hobby lathe starts (common practice, no source)."""
REAM_LOW, REAM, REAM_HIGH = 1 / 3, 1 / 2, 2 / 3
"""Reaming speed as a share of the drilling speed: about one half (TM 1-420), found from a third to two thirds."""


class CuttingRate(NamedTuple):
    """One operation: the diameter cut, the speed to start with and the table's range (ft/min), the spindle's rpm."""

    operation: str
    diameter: float
    start: float
    low: float
    high: float

    def rpm(self, feet_per_minute: float) -> float:
        """n = 1000·v/(π·D), v in m/min, D in mm."""
        return 1000 * feet_per_minute * M_PER_FOOT / (pi * self.diameter)

    def as_dict(self) -> dict[str, object]:
        return {
            "operation": self.operation,
            "diameter_mm": self.diameter,
            "speed_m_min": self.start * M_PER_FOOT,
            "rpm": self.rpm(self.start),
            "rpm_low": self.rpm(self.low),
            "rpm_high": self.rpm(self.high),
        }


def metal(name: str) -> Row:
    """The row of a metal by its everyday name. Raises CenterInputError with the names there are."""
    rows = {row.text("metal").lower(): row for row in load(SPEEDS)}
    if name.strip().lower() not in rows:
        raise CenterInputError(
            "metal", name, "is not in the table of speeds", ", ".join(r.text("metal") for r in rows.values())
        )
    return rows[name.strip().lower()]


def rates(row: Row, diameter: float, hole: float, drill: float, carbide: bool, light: bool) -> list[CuttingRate]:
    """Turning, drilling and reaming for one blank. A light lathe starts at 70 % of the low end of the table."""
    share = LIGHT_LATHE if light else 1.0
    turn = "turn_carbide" if carbide else "turn_steel"

    def rate(operation: str, at: float, low: float, high: float, usual: float) -> CuttingRate:
        return CuttingRate(operation, at, share * usual, low, high)

    turn_low, turn_high = row.number(f"{turn}_low"), row.number(f"{turn}_high")
    drill_low, drill_high = row.number("drill_low"), row.number("drill_high")
    return [
        rate("turning", diameter, turn_low, turn_high, turn_low),
        rate("drilling", drill, drill_low, drill_high, drill_low),
        rate("reaming", hole, REAM_LOW * drill_low, REAM_HIGH * drill_high, REAM * drill_low),
    ]


def growth(row: Row, diameter: float, rise: float) -> float:
    """How much larger a warm part measures: D·α·ΔT, mm."""
    return diameter * row.number("expansion") * 1e-6 * rise


class Taper(NamedTuple):
    """A Morse-type self-holding taper: number, diameter at the large end (mm), half angle (degrees)."""

    number: int
    large_diameter: float
    half_angle: float


def taper(number: int) -> Taper:
    """The taper of a number 0 to 5: half angle atan(1/(2·n)) for a taper of 1:n on the diameter."""
    row = next(row for row in load(TAPERS) if row.number("number") == number)
    return Taper(number, row.number("large_diameter"), degrees(atan(1 / (2 * row.number("taper")))))
