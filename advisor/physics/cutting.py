"""Cutting force, power, feed and chip."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import Literal

from advisor.figure import Also, Grade, NoAnswer, figure
from advisor.quantity import (
    FigureInputError,
    N,
    factor_number,
    kg_per_m3,
    mm,
    mm_per_s,
    nearest,
    percent,
    rake_deg,
    rpm,
    turning_rpm,
)

Mode = Literal["along", "across", "end"]

THINNEST_CHIP_MM = 0.05  # a thinner one rubs; memory
THICKEST_CHIP_MM = 1.5  # memory
LEAST_RAKE = 0.0  # memory
MOST_RAKE = 45.0  # memory
# Constants of the wood model, from memory: set to remembered levels of specific resistance, within 1.7 either way.
EDGE_TERM = 3.5  # N/mm
CHIP_TERM = 6.0  # N/mm²
REFERENCE_DENSITY = 650.0
# Edge and motion against the grain: along it, peeling across it, end grain.
MODE_FACTOR = {"along": 1.0, "across": 0.6, "end": 3.5}
BOWL_MEAN_FACTOR = 2.2  # of a bowl blank over a turn: power with this, torque with the end-grain peak
DRY_BELOW = 12.0
WET_FROM = 30.0
WET_FACTOR = 0.7
REFERENCE_RAKE = 25.0
RAKE_SLOPE = 0.012  # per degree
RAKE_FLOOR = 0.7
REFERENCE_CHIP_MM = 0.1
CHIP_POWER = -0.3


def moisture_factor(moisture: float) -> float:
    """Cutting force of wood against that at 12 %: 1 up to 12 %, falling evenly to 0.7 at 30 %. From memory.

    >>> round(moisture_factor(21), 2)
    0.85
    """
    wet = min(max((moisture - DRY_BELOW) / (WET_FROM - DRY_BELOW), 0.0), 1.0)
    return 1 - (1 - WET_FACTOR) * wet


def rake_factor(rake: float) -> float:
    """Cutting force of wood against that at 25° rake: 1 − 0.012·(γ − 25°), not below 0.7. From memory.

    >>> rake_factor(25)
    1.0
    """
    return max(1 - RAKE_SLOPE * (rake - REFERENCE_RAKE), RAKE_FLOOR)


def _require_chip(thickness: float) -> None:
    if not THINNEST_CHIP_MM <= thickness <= THICKEST_CHIP_MM:
        raise NoAnswer(f"chip thickness outside {THINNEST_CHIP_MM:g} to {THICKEST_CHIP_MM:g} mm: the model ends there")


@figure(
    title="main cutting force in wood",
    symbol="F_c",
    equation="b·(3.5·s + 6·t)·(ρ/650)·C_mode·C_w·C_γ",
    unit="N",
    grade=Grade.ROUGH_GUIDE,
    sources=("memory", "woodson-1979", "palubicki-2021"),
    valid="chip 0.05 to 1.5 mm, rake 0 to 45°; the trend is better known than the size",
    section="6.1",
    symbols={
        "width": "b",
        "thickness": "t",
        "density": "ρ",
        "sharpness": "s",
        "mode_factor": "C_mode",
        "moisture_factor": "C_w",
        "rake_factor": "C_γ",
    },
    also=lambda mode, moisture, rake, **_: {
        "mode_factor": (MODE_FACTOR[mode], ""),
        "moisture_factor": (moisture_factor(moisture), ""),
        "rake_factor": (rake_factor(rake), ""),
    },
)
def wood_cutting_force(
    width: mm,
    thickness: mm,
    density: kg_per_m3,
    mode: Mode,
    sharpness: factor_number = 1.0,
    moisture: percent = 12.0,
    rake: rake_deg = 25.0,
) -> float:
    """Main cutting force of one edge in wood.

    Formula  F_c = b·(3.5·s + 6·t)·(ρ/650)·C_mode·C_w·C_γ
    Inputs   width mm and thickness mm of the chip, density kg/m³ at 12 %, mode along, across (peeling a spindle) or
             end, sharpness 1 sharp, 1.5 used, 2.5 dull, moisture percent, rake degrees
    Gives    N
    Valid    chip 0.05 to 1.5 mm, rake 0 to 45°; constants from memory, within 1.7 either way
    Errors   no answer outside that chip and rake
    Source   level from memory; trends of Woodson, USDA Forest Service Research Paper SO-146, 1979; level of
             particleboard in Pałubicki, Materials 14:2208, 2021

    >>> round(wood_cutting_force(width=6, thickness=0.2, density=650, mode="along"))
    28
    """
    _require_chip(thickness)
    if not LEAST_RAKE <= rake <= MOST_RAKE:
        raise NoAnswer(f"rake outside {LEAST_RAKE:g} to {MOST_RAKE:g}°: the model ends there")
    chip = width * (EDGE_TERM * sharpness + CHIP_TERM * thickness)
    return chip * density / REFERENCE_DENSITY * MODE_FACTOR[mode] * moisture_factor(moisture) * rake_factor(rake)


@lru_cache(maxsize=1)
def specific_forces() -> dict[str, float]:
    """Specific cutting force in N/mm² at a chip of 0.1 mm of plastics and laminates, by every name. From memory."""
    from advisor.data.tables import Number, Table, Text, load

    columns = (Text("material"), Text("other_names", required=False), Number("specific_n_mm2", 1, 1000), Text("source"))
    found: dict[str, float] = {}
    for row in load(Table("plastic_cutting.csv", columns, key=("material",), rows=12)):
        for name in (row.text("material"), *row.text("other_names").split(";")):
            found[name.strip()] = row.number("specific_n_mm2")
    return found


def specific_force(material: str) -> float:
    """Specific cutting force in N/mm² of a plastic or laminate by name. FigureInputError for an unknown name.

    >>> specific_force("Acetal")
    100.0
    """
    known = specific_forces()
    key = material.strip().lower().replace(" ", "-").replace("_", "-")
    if key not in known:
        raise FigureInputError("material", material, f"one of {', '.join(known)}{nearest(key, list(known))}")
    return known[key]


def layer_force(specific: float, width: float, thickness: float) -> float:
    """Cutting force in N of a material with `specific` N/mm² at a chip of 0.1 mm: K·b·t·(t/0.1)^−0.3, mm. From memory.

    >>> round(layer_force(100, 1.414, 0.1414))
    18
    """
    return specific * width * thickness * math.pow(thickness / REFERENCE_CHIP_MM, CHIP_POWER)


def _specific(material: str, **_: float) -> Also:
    return {"specific_force": (specific_force(material), "N/mm²")}


@figure(
    title="main cutting force in plastic or laminate",
    symbol="F_c",
    equation="K·b·t·(t/0.1)^(−0.3)",
    unit="N",
    grade=Grade.ROUGH_GUIDE,
    sources=("memory",),
    valid="chip 0.05 to 1.5 mm",
    section="6.2",
    symbols={"width": "b", "thickness": "t", "specific_force": "K"},
    also=_specific,
)
def plastic_cutting_force(material: str, width: mm, thickness: mm) -> float:
    """Main cutting force in a plastic or a laminate.

    Formula  F_c = K·b·t·(t/0.1)^−0.3, K at a chip of 0.1 mm
    Inputs   material (ptfe, hdpe, pp, nylon, acetal, pc, acrylic, pvc, canvas-phenolic, linen-phenolic, paper-phenolic,
             glass-laminate), width mm and thickness mm of the chip
    Gives    N
    Valid    chip 0.05 to 1.5 mm; constants from memory
    Errors   no answer outside that chip; an unknown material is refused
    Source   from memory

    >>> round(plastic_cutting_force(material="acetal", width=1.414, thickness=0.1414))
    18
    """
    specific = specific_force(material)
    _require_chip(thickness)
    return layer_force(specific, width, thickness)


@figure(
    title="power at the edge",
    symbol="P",
    equation="F_c·π·D·n",
    unit="W",
    grade=Grade.CALCULATED,
    sources=("kinematics",),
    valid="at the edge; the spindle and belt take 15 to 30 % more",
    section="6.3",
    symbols={"force": "F_c", "diameter": "D", "rpm": "n"},
)
def cutting_power(force: N, diameter: mm, rpm: rpm) -> float:
    """Power that the cut takes from the spindle.

    Formula  P = F_c·π·D·n/60
    Inputs   force N, diameter mm at the cut, rpm
    Gives    W
    Valid    at the edge; the motor gives more, at 0.7 to 0.85 efficiency
    Source   kinematics

    >>> round(cutting_power(force=60, diameter=150, rpm=1000))
    471
    """
    return force * math.pi * diameter / 1000 * rpm / 60


@figure(
    title="feed per turn",
    symbol="f",
    equation="v_f/n",
    unit="mm",
    grade=Grade.CALCULATED,
    sources=("kinematics",),
    valid="steady traverse; a chip under 0.05 mm rubs",
    section="6.3",
    symbols={"traverse": "v_f", "rpm": "n"},
)
def feed_per_turn(traverse: mm_per_s, rpm: turning_rpm) -> float:
    """How far the tool moves along in one turn.

    Formula  f = 60·v_f/n
    Inputs   traverse mm/s (by hand 2 to 15), rpm
    Gives    mm
    Valid    steady traverse
    Source   kinematics

    >>> feed_per_turn(traverse=5, rpm=1200)
    0.25
    """
    return 60 * traverse / rpm


def chip_width(depth: float, edge_angle: float) -> float:
    """Width in mm of the chip of a cut `depth` mm deep, edge at `edge_angle` degrees to the feed: a/sin κ. Geometry.

    >>> round(chip_width(1, 45), 3)
    1.414
    """
    return depth / math.sin(math.radians(edge_angle))


def chip_thickness(feed: float, edge_angle: float) -> float:
    """Thickness in mm of the chip at a feed in mm per turn, edge at `edge_angle` degrees: f·sin κ. Geometry.

    >>> round(chip_thickness(0.2, 45), 3)
    0.141
    """
    return feed * math.sin(math.radians(edge_angle))
