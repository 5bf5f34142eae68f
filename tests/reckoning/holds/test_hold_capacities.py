"""Every way of holding against statics worked by hand.

Sugar maple at 12 %: Wood Handbook table 5-3 (1470 psi across the grain, gravity 0.63), its relatives' 4.6 MPa in
tension across the grain; 5 % values with the variations of table 5-6. Friction, grips and glue are the advisor's
stated ends.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.reckoning.holds import METHODS
from tests.reckoning.holds.hold_bench import BOWL, ROD, Section, job, judged, ratios

F90 = 1470 * 0.00689476  # MPa
F90_LOW = F90 * (1 - 1.645 * 0.28)
TENSION = 4.6
TENSION_LOW = TENSION * (1 - 1.645 * 0.25)
GRAVITY = 0.63
SHAPING: Section = {"operation": "shaping", "force": 100.0}
FINISHING: Section = {"operation": "finishing", "force": 25.0}


def on_outside(diameter: float, grips: tuple[float, float]) -> tuple[float, float]:
    """Torque in N·m of jaws round a diameter in mm at both ends of friction."""
    return 0.20 * grips[0] * diameter / 2000, 0.35 * grips[1] * diameter / 2000


def recess_grip(tension: float) -> float:
    ring = (149**2 - 75**2) / (149**2 + 75**2)
    return math.pi * 75 * 4 * tension * ring / 2


def bonded(shear: float, diameter: float) -> float:
    return math.pi * shear * diameter**3 / 16e3


PULL = 108.25 * GRAVITY**2 * 8 * 25  # one 8 × 25 mm screw, N
PLATE = 4 * 44.13 * 5.5**2 * (0.8 * 0.4 * 254) / 2000 * 0.5  # four 5.5 mm screws in wet hard maple, N·m
SUCTION = 50e-3 * math.pi / 4 * 120**2  # N
BALL: Section = {**BOWL, "form": "sphere", "purpose": "sphere", "grain": "along", "diameter": 75.0, "length": 75.0}
DISC: Section = {**BOWL, "purpose": "other", "diameter": 200.0, "length": 40.0}
GREEN: Section = {**BOWL, "moisture": "green", "state": "not-round"}
PLATTER: Section = {**BOWL, "purpose": "platter", "diameter": 304.8, "length": 38.0}
SMALL: Section = {**BOWL, "diameter": 152.4, "length": 75.0}
FOUR_SCREWS: Section = {"screws": {"count": 4, "diameter": 5.5, "length": 25.0}}
PVA: Section = {"glue": {"kind": "pva", "diameter": 75.0, "cured": True}}

# method, work, hold, cut, (torque low, torque typical) in N·m, torque asked in N·m
WORKED: list[tuple[str, Section, Section, Section, tuple[float, float], float]] = [
    ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, SHAPING, on_outside(75, (3000, 6000)), 25.4),
    ("long-jaws", {**ROD, "diameter": 100.0}, {}, SHAPING, on_outside(60, (3000, 6000)), 7.5),
    (
        "jaws-in-recess",
        PLATTER,
        {"recess": {"diameter": 75.0, "depth": 4.0, "wall": 37.0}},
        FINISHING,
        on_outside(75, (recess_grip(TENSION_LOW), recess_grip(TENSION))),
        2 * 25 * 0.1524,
    ),
    ("rubber-button-jaws", {**BOWL, "state": "finished"}, {}, FINISHING, (0.3 * 200 * 0.127, 0.4 * 500 * 0.127), 1.905),
    ("three-jaw", ROD, {}, SHAPING, on_outside(40, (3000, 8000)), 3.0),
    ("four-jaw-independent", ROD, {}, SHAPING, on_outside(40, (4000, 10000)), 3.0),
    ("soft-jaws", ROD, {}, SHAPING, on_outside(40, (3000, 6000)), 3.0),
    ("split-bushing", ROD, {}, SHAPING, on_outside(40, (3000, 8000)), 3.0),
    ("collet", {**ROD, "diameter": 25.0}, {}, SHAPING, on_outside(25, (4000, 10000)), 1.875),
    ("collet-block", {**ROD, "diameter": 25.0}, {}, SHAPING, on_outside(25, (4000, 10000)), 1.875),
    ("through-spindle", {**ROD, "diameter": 25.0}, {"kit": ["collet", "through-spindle"]}, SHAPING,
     on_outside(25, (4000, 10000)), 1.875),
    # three lines of 2 × 15 mm crush before the key is tight
    ("drill-chuck", {**ROD, "diameter": 10.0}, {}, {**SHAPING, "force": 20.0},
     on_outside(10, (90 * 1.5 * F90_LOW / 1.2, 90 * 1.5 * F90)), 0.15),
    ("faceplate-screws", GREEN, FOUR_SCREWS, SHAPING, (0.59 * PLATE, PLATE), 25.4),
    ("offset-faceplate", GREEN, {**FOUR_SCREWS, "method": "offset-faceplate"}, SHAPING, (0.59 * PLATE, PLATE), 25.4),
    ("screw-chuck", {**BOWL, "diameter": 120.0}, {}, {**SHAPING, "force": 60.0},
     (0.20 * 0.59 * PULL * 0.020, 0.35 * PULL * 0.020), 7.2),
    ("glue-block", SMALL, PVA, SHAPING, (bonded(0.7 * 4, 75), bonded(0.7 * 10, 75)), 15.24),
    ("waste-block-faceplate", SMALL, PVA, SHAPING, (bonded(0.7 * 4, 75), bonded(0.7 * 10, 75)), 15.24),
    ("paper-joint", SMALL, PVA, SHAPING, (bonded(0.21 * 4, 75), bonded(0.21 * 10, 75)), 15.24),
    ("double-sided-tape", {**DISC, "diameter": 101.6, "length": 12.7}, {"glue": {"diameter": 75.0}}, FINISHING,
     (bonded(0.05, 75), bonded(0.3, 75)), 2.54),
    ("vacuum", DISC, {}, FINISHING, (0.25 * SUCTION * 0.060, 0.5 * SUCTION * 0.060), 5.0),
    ("clamped-faceplate", DISC, {}, SHAPING, (0.20 * 3 * 1000 * 0.080, 0.35 * 3 * 2000 * 0.080), 20.0),
    ("friction-block", {**BOWL, "state": "finished"}, {}, FINISHING,
     (0.25 * 100 * 0.127 / 3, 0.5 * 200 * 0.127 / 3), 25 * 0.4 * 0.127),
    ("sphere-cups", BALL, {}, FINISHING, (0.3 * 100 * 0.0225, 0.5 * 250 * 0.0225), 25 * 0.0375),
    ("mandrel", {**ROD, "form": "tube", "purpose": "pen", "diameter": 15.0, "length": 60.0}, {}, FINISHING,
     (2 * 0.20 * 300 * 0.006, 2 * 0.35 * 800 * 0.006), 25 * 0.0075),
    # four teeth 7.5 mm long at 8.75 mm, 3 mm deep
    ("spur-drive", {**ROD, "diameter": 76.0, "length": 300.0},
     {"drive": {"teeth": 4, "outer_diameter": 25.0, "inner_diameter": 10.0, "seated_depth": 3.0}}, SHAPING,
     (4 * 1.5 * F90_LOW * 7.5 * 3 * 8.75e-3, 4 * 1.5 * F90 * 7.5 * 3 * 8.75e-3), 5.7),
    # two teeth 17.5 mm long at 16.25 mm, 6 mm deep; one bears across the fibers, one at twice that along them
    ("two-spur-drive", BOWL,
     {"drive": {"teeth": 2, "outer_diameter": 50.0, "inner_diameter": 15.0, "seated_depth": 6.0}}, SHAPING,
     (2 * 1.5 * 1.5 * F90_LOW * 17.5 * 6 * 16.25e-3, 2 * 1.5 * 1.5 * F90 * 17.5 * 6 * 16.25e-3), 25.4),
    ("toothed-ring-drive", {**ROD, "diameter": 100.0, "length": 200.0}, {"tail": {"kind": "live-cup"}}, SHAPING,
     (0.20 * 0.9 * 1000 * 0.0144, 0.45 * 0.9 * 1000 * 0.0144), 5.0),
    ("cup-drive", {**ROD, "diameter": 100.0, "length": 200.0}, {"tail": {"kind": "live-cup"}}, SHAPING,
     (0.20 * 0.9 * 600 * 0.0115625, 0.35 * 0.9 * 600 * 0.0115625), 5.0),
]
PRACTICE = ("point-and-pin-drive", "square-socket-drive", "driving-dog", "pin-chuck", "ring-clamp-plate", "keyed-stud")


@pytest.mark.parametrize(("method", "work", "hold", "cut", "stands", "asked"), WORKED, ids=[row[0] for row in WORKED])
def test_torque_by_hand(
    method: str, work: Section, hold: Section, cut: Section, stands: tuple[float, float], asked: float
) -> None:
    low, typical = ratios(judged(method, work, hold, cut))
    assert low == pytest.approx(stands[0] / asked, rel=0.01)
    assert typical == pytest.approx(stands[1] / asked, rel=0.01)


def test_press_fit_by_hand() -> None:
    work = {**ROD, "diameter": 100.0}
    figures = judged("jam-chuck", work, None, FINISHING)
    wood = job(work).wood
    assert wood is not None
    share = 0.85**2
    asked = 1.5 * 25 * 0.05
    for ratio, fit, length, rub, modulus, tension in (
        (figures.low, 0.1, 6, 0.25, wood.modulus_perpendicular.low, TENSION_LOW),
        (figures.typical, 0.2, 8, 0.35, wood.modulus_perpendicular.typical, TENSION),
    ):
        fitted = modulus * 1e3 * fit / (2 * 85) * (1 - share)
        bursts = tension / 3 * (1 - share) / (1 + share)
        torque = rub * min(fitted, bursts) * math.pi * 85**2 * length / 2 * 1e-3
        assert ratio == pytest.approx(torque / asked, rel=0.01)


@pytest.mark.parametrize("method", PRACTICE)
def test_practice_alone_gives_no_numbers(method: str) -> None:
    figures = judged(method, ROD)
    assert (figures.low, figures.typical, figures.margins) == (None, None, ())


def test_every_method_is_covered() -> None:
    covered = {row[0] for row in WORKED} | set(PRACTICE) | {"jam-chuck"}
    assert covered == set(METHODS)
    assert len(METHODS) == 35


HOLLOWING: Section = {"operation": "hollowing"}


@pytest.mark.parametrize(
    ("method", "work", "hold", "cut", "low", "typical_divided"),
    [
        # the worked holds of the design: torque, tipping and pull together
        ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, {"operation": "roughing"}, 0.8, 1.9),
        ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, HOLLOWING, 0.8, 1.1),
    ],
)
def test_tenon_of_a_ten_inch_bowl(
    method: str, work: Section, hold: Section, cut: Section, low: float, typical_divided: float
) -> None:
    figures = judged(method, work, hold, cut)
    assert round(ratios(figures)[0], 1) == low
    assert figures.divided == pytest.approx(typical_divided, abs=0.05)


def test_tipping_pull_and_weight_by_hand() -> None:
    work = {**BOWL, "mass": 4.0, "offset": 2.0}
    figures = judged("jaws-on-tenon", work, {"tenon": {"diameter": 75.0}}, {**HOLLOWING, "force": 60.0})
    turning = 4.0 * 0.002 * (2 * math.pi * 500 / 60) ** 2
    moment = 2 * 60 * 0.1 + (4.0 * 9.80665 + turning) * 0.05
    asked: dict[str, Any] = {margin.name: margin.need for margin in figures.margins}
    assert asked == pytest.approx({"torque": 2 * 60 * 0.127, "moment": moment, "pull": 0.3 * 2 * 60})
    stands = {margin.name: margin.have * 2.5 for margin in figures.margins}
    assert stands["moment"] == pytest.approx(1.25 * 0.35 * 6000 * 0.0455)
    assert stands["pull"] == pytest.approx(0.35 * 6000)
