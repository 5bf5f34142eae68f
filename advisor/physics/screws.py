"""Screws in a faceplate and the lone screw of a screw chuck.

Numbers are ultimate, before any divisor, unless a function says otherwise.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any, Literal

from advisor.figure import Grade, figure
from advisor.quantity import FigureInputError, N, gravity_number, lengths, mm

Kind = Literal["wood", "lag"]
Fiber = Literal["side", "end"]

# Exact conversions of 15 700·G²·D·L lb (wood screw) and 8100·G^1.5·D^0.75·L lb (lag screw), inches, to N and mm.
WOOD_SCREW = 108.25  # Wood Handbook, chapter 8
LAG_SCREW = 125.4  # Wood Handbook, chapter 8
END_GRAIN = 0.75  # as printed; erratic
END_GRAIN_ADVISED = 0.5  # what advice counts on; codes allow wood screws no withdrawal from end grain at all; memory
GREEN = 0.5  # driven green, or wetted again; memory
ALLOWABLE_DIVISOR = 5.5  # ultimate over the allowable 2850·G²·D lb/in of timber design; nds
LEAD_HOLE_SOFTWOOD = 0.70  # of the root diameter; Wood Handbook, chapter 8, from memory
LEAD_HOLE_HARDWOOD = 0.90  # the same, from memory


def _withdrawal_form(inputs: Mapping[str, Any]) -> str:
    formula = "108.25·G²·D·L" if inputs["kind"] == "wood" else "125.4·G^1.5·D^0.75·L"
    return formula if inputs["fiber"] == "side" else f"0.75·{formula}"


@figure(
    title="force that pulls a screw out",
    symbol="W",
    equation="108.25·G²·D·L",
    unit="N",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-8", "nds"),
    valid="seasoned wood, proper lead hole; end grain is erratic; no divisor in it",
    section="5.5",
    symbols={"gravity": "G", "diameter": "D", "thread": "L"},
    forms=_withdrawal_form,
)
def screw_withdrawal(gravity: gravity_number, diameter: mm, thread: mm, kind: Kind, fiber: Fiber) -> float:
    """Force that pulls one screw straight out, as tests give it.

    Formula  W = 108.25·G²·D·L (wood screw), 125.4·G^1.5·D^0.75·L (lag screw), N and mm; × 0.75 in end grain
    Inputs   gravity G (oven-dry mass over volume at 12 %), diameter mm of the shank, thread mm in the wood, kind wood
             or lag, fiber side or end
    Gives    N, ultimate; green or wetted wood holds half, and advice counts on 0.5 in end grain, not 0.75
    Valid    seasoned wood, lead hole 70 % (softwood) or 90 % (hardwood) of the root diameter
    Source   Wood Handbook, chapter 8; National Design Specification for Wood Construction

    >>> round(screw_withdrawal(gravity=0.63, diameter=4.17, thread=25.4, kind="wood", fiber="side"), -1)
    4550.0
    """
    if kind == "wood":
        side = WOOD_SCREW * gravity**2 * diameter * thread
    else:
        side = LAG_SCREW * math.pow(gravity, 1.5) * math.pow(diameter, 0.75) * thread
    return side if fiber == "side" else END_GRAIN * side


@figure(
    title="moment that tears a screwed plate off over its edge",
    symbol="M",
    equation="W·Σ x²/x_max",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("statics",),
    valid="rigid plate that tips about its edge, equal screws; no divisor in it",
    section="5.5",
    symbols={"withdrawal": "W", "positions": "x"},
)
def screw_group_moment(withdrawal: N, positions: lengths) -> float:
    """Moment at which the farthest screw of a plate that tips about its edge is pulled out.

    Formula  M = W·Σ x²/x_max
    Inputs   withdrawal N of one screw, positions mm of the screws from the edge the plate tips over
    Gives    N·m
    Valid    rigid plate, equal screws
    Errors   positions that are all zero are refused
    Source   statics; rigid plate on equal springs

    >>> round(screw_group_moment(withdrawal=4710, positions=[20, 60, 60, 100]))
    829
    """
    farthest = max(positions, default=0.0)
    if farthest <= 0:
        raise FigureInputError("positions", list(positions), "distances from the pivot edge, at least one above zero")
    return withdrawal * sum(place**2 for place in positions) / farthest / 1000


def screw_group_torque(lateral: float, radii: list[float]) -> float:
    """Torque in N·m of screws that each carry `lateral` N sideways at radii in mm: Σ V·r. Source: statics.

    >>> screw_group_torque(500, [40, 40, 40, 40])
    80.0
    """
    return lateral * sum(radii) / 1000


def screw_lateral(lateral_constant: float, diameter: float) -> float:
    """Sideways load in N that one screw may carry for good, K·D², with K in MPa and the shank diameter in mm.

    Source: Wood Handbook, FPL-GTR-282 (2021), Table 8-4, wood-screw column.

    >>> round(screw_lateral(44.13, 4.83))
    1030
    """
    return lateral_constant * diameter**2


def screw_use(withdrawal: float, withdrawal_capacity: float, lateral: float, lateral_capacity: float) -> float:
    """How much of a screw is used when it is pulled and pushed at once: W/W_c + V/V_c. Source: statics, linear.

    >>> screw_use(100, 400, 100, 200)
    0.75
    """
    return withdrawal / withdrawal_capacity + lateral / lateral_capacity


def screw_chuck_torque(friction: float, preload: float, face_radius: float) -> float:
    """Torque in N·m by friction of the face that a lone screw pulls home with `preload` N: µ·W·(2/3)·R.

    `face_radius` mm. It tightens itself one way only: never run it in reverse. Source: statics; from memory.

    >>> round(screw_chuck_torque(0.2, 600, 30), 2)
    2.4
    """
    return friction * preload * 2 / 3 * face_radius / 1000


def screw_chuck_moment(withdrawal: float, face_radius: float) -> float:
    """Moment in N·m at which a lone screw is pulled out over the edge of its face: W·R, N and mm. Source: statics.

    >>> round(screw_chuck_moment(3410, 30))
    102
    """
    return withdrawal * face_radius / 1000
