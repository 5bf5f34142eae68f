"""Factors of every unit against scipy.constants, which takes them from CODATA and NIST Special Publication 811.

The SI Brochure's prefixes are powers of ten. A unit that the library does not name is built here from those it does.
"""

from __future__ import annotations

import csv
from fractions import Fraction

import pytest
from scipy import constants as si

from advisor.data.tables import FOLDER

SOURCES = ("si-brochure", "nist-sp-811")
MPA = 1e6
KPA = 1e3
INLBF = si.inch * si.lbf
# kind and unit -> how large it is in the canonical unit of its kind
LIBRARY = {
    ("length", "cm"): si.centi / si.milli, ("length", "m"): 1 / si.milli, ("length", "µm"): si.micro / si.milli,
    ("length", "in"): si.inch / si.milli, ("length", "ft"): si.foot / si.milli, ("length", "thou"): si.mil / si.milli,
    ("mass", "g"): si.gram, ("mass", "t"): si.metric_ton, ("mass", "lb"): si.pound, ("mass", "oz"): si.ounce,
    ("force", "kN"): si.kilo, ("force", "lbf"): si.lbf, ("force", "kgf"): si.kgf,
    ("torque", "N·cm"): si.centi, ("torque", "N·mm"): si.milli, ("torque", "in-lbf"): INLBF,
    ("torque", "ft-lbf"): si.foot * si.lbf, ("torque", "kgf·m"): si.kgf,
    ("stress", "GPa"): si.giga / MPA, ("stress", "kPa"): si.kilo / MPA, ("stress", "Pa"): 1 / MPA,
    ("stress", "psi"): si.psi / MPA, ("stress", "ksi"): si.kilo * si.psi / MPA,
    ("pressure", "Pa"): 1 / KPA, ("pressure", "MPa"): si.mega / KPA, ("pressure", "bar"): si.bar / KPA,
    ("pressure", "mbar"): si.milli * si.bar / KPA, ("pressure", "inHg"): si.inch / si.milli * si.mmHg / KPA,
    ("pressure", "mmHg"): si.mmHg / KPA, ("pressure", "psi"): si.psi / KPA,
    ("angle", "arcmin"): si.arcmin / si.degree, ("angle", "arcsec"): si.arcsec / si.degree,
    ("rpm", "rev/s"): si.minute,
    ("cutting-speed", "m/s"): si.minute, ("cutting-speed", "ft/min"): si.foot,
    ("cutting-speed", "ft/s"): si.foot * si.minute,
    ("speed", "mm/s"): si.milli, ("speed", "m/min"): 1 / si.minute, ("speed", "km/h"): si.kmh, ("speed", "mph"): si.mph,
    ("speed", "ft/s"): si.foot, ("speed", "ft/min"): si.foot / si.minute,
    ("traverse", "mm/min"): 1 / si.minute, ("traverse", "m/min"): si.kilo / si.minute,
    ("traverse", "in/s"): si.inch / si.milli, ("traverse", "in/min"): si.inch / si.milli / si.minute,
    ("power", "kW"): si.kilo, ("power", "hp"): si.hp,
    ("density", "g/cm3"): si.gram / si.centi**3, ("density", "lb/ft3"): si.pound / si.foot**3,
    ("density", "lb/in3"): si.pound / si.inch**3,
    ("fracture-energy", "kJ/m2"): si.kilo, ("fracture-energy", "in-lbf/in2"): INLBF / si.inch**2,
    ("fracture-energy", "ft-lbf/in2"): si.foot * si.lbf / si.inch**2,
    ("rise", "F"): si.degree_Fahrenheit, ("expansion", "µm/m/K"): si.micro,
    ("expansion", "/F"): 1 / si.degree_Fahrenheit,
    ("mass-radius", "kg·mm"): si.milli, ("mass-radius", "g·m"): si.gram, ("mass-radius", "g·mm"): si.gram * si.milli,
    ("mass-radius", "lb-in"): si.pound * si.inch, ("mass-radius", "lb-ft"): si.pound * si.foot,
    ("mass-radius", "oz-in"): si.ounce * si.inch,
    ("altitude", "km"): si.kilo, ("altitude", "ft"): si.foot,
    ("time", "min"): si.minute / si.hour, ("time", "s"): 1 / si.hour, ("time", "day"): si.day / si.hour,
    ("time", "week"): si.week / si.hour,
    ("per-turn", "in"): si.inch / si.milli, ("per-turn", "thou"): si.mil / si.milli,
}  # fmt: skip
CANONICAL = 1.0
MERCURY = 2e-6  # the conventional inch and millimeter are printed with six or seven figures


def factors() -> dict[tuple[str, str], float]:
    """Every unit of the table and its factor."""
    with (FOLDER / "units.csv").open(encoding="utf-8", newline="") as lines:
        found = {}
        for row in csv.DictReader(lines):
            above, _, below = row["factor"].partition("/")
            found[row["kind"], row["unit"]] = float(Fraction(above) / Fraction(below or "1"))
        return found


def test_every_unit_is_compared_or_is_the_one_others_are_measured_by() -> None:
    found = factors()
    assert set(LIBRARY) <= set(found)
    assert {found[name] for name in set(found) - set(LIBRARY)} == {CANONICAL}


@pytest.mark.parametrize("name", LIBRARY, ids=[f"{kind} {unit}" for kind, unit in LIBRARY])
def test_a_factor_is_the_library_s(name: tuple[str, str]) -> None:
    assert factors()[name] == pytest.approx(LIBRARY[name], rel=MERCURY if "Hg" in name[1] else 1e-10)
