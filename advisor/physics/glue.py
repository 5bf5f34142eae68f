"""Glue blocks, tape and jam fits. Numbers are before any divisor."""

from __future__ import annotations

import math

from advisor.figure import Also, Grade, figure
from advisor.quantity import FigureInputError, GPa, MPa, friction_number, mm, mm_or_zero

# Shares of the strength of a sound side-grain joint that are left; the first published, the others from memory.
END_GRAIN = 0.25  # Wood Handbook, chapter 10
PAPER_JOINT = 0.3
GREEN_WOOD = 0.3
AREA_TOUCHED = 0.7
WOOD_SHEAR_SHARE = 0.7  # of the wood's own shear strength: no bond is believed to carry more
GLUE_DIVISOR = 5.0


@figure(
    title="torque that a glued disc carries",
    symbol="T",
    equation="π·τ·d³/16",
    unit="N·m",
    grade=Grade.ROUGH_GUIDE,
    sources=("roark", "memory"),
    valid="whole round face, sound joint; the strength is what is not known",
    section="5.7",
    symbols={"shear": "τ", "diameter": "d"},
)
def glue_torque(shear: MPa, diameter: mm) -> float:
    """Torque at which a glued or taped round face shears off.

    Formula  T = π·τ·d³/16
    Inputs   shear MPa with all its derates, diameter mm of the face
    Gives    N·m, before a divisor of 5
    Valid    whole round face
    Source   torsion of a round section; strengths from memory

    >>> round(glue_torque(shear=1, diameter=60), 1)
    42.4
    """
    return math.pi * shear * diameter**3 / 16000


@figure(
    title="moment that opens a glued disc",
    symbol="M",
    equation="π·σ·d³/32",
    unit="N·m",
    grade=Grade.ROUGH_GUIDE,
    sources=("roark", "memory"),
    valid="whole round face, sound joint; cleavage strength, not shear",
    section="5.7",
    symbols={"peel": "σ", "diameter": "d"},
)
def glue_moment(peel: MPa, diameter: mm) -> float:
    """Moment at which a glued or taped round face peels open.

    Formula  M = π·σ·d³/32
    Inputs   peel MPa: cleavage strength, 0.15 to 0.3 of the shear strength, diameter mm of the face
    Gives    N·m, before a divisor of 5
    Valid    whole round face
    Source   bending of a round section; strengths from memory

    >>> round(glue_moment(peel=0.5, diameter=60), 1)
    10.6
    """
    return math.pi * peel * diameter**3 / 32000


def _jam_parts(
    interference: float, diameter: float, outside_diameter: float, modulus: float, length: float, **_: float
) -> Also:
    pressure = modulus * 1000 * interference / (2 * diameter) * (1 - (diameter / outside_diameter) ** 2)
    ring = (outside_diameter**2 + diameter**2) / (outside_diameter**2 - diameter**2)
    return {
        "pressure": (pressure, "MPa"),
        "grip": (pressure * math.pi * diameter * length, "N"),
        "hoop_tension": (pressure * ring, "MPa"),
    }


@figure(
    title="torque of a jam fit",
    symbol="T",
    equation="µ·p·π·d²·h/2",
    unit="N·m",
    grade=Grade.ROUGH_GUIDE,
    sources=("roark", "memory"),
    valid="good for minutes: a few percent of moisture move the fit by more than its interference",
    section="5.8",
    symbols={"friction": "µ", "diameter": "d", "length": "h", "pressure": "p"},
    also=_jam_parts,
)
def jam_fit(
    interference: mm_or_zero, diameter: mm, outside_diameter: mm, modulus: GPa, length: mm, friction: friction_number
) -> float:
    """Torque that a spigot pressed into a ring of the same wood carries.

    Formula  T = µ·p·π·d²·h/2, p = E_90·δ/(2·d)·(1 − (d/D_o)²)
    Inputs   interference mm on the diameter, diameter mm of the fit, outside_diameter mm of the ring, modulus GPa
             across the grain, length mm of the fit, friction
    Gives    N·m; `grip` N, `pressure` MPa, `hoop_tension` MPa, to be kept under a third of the strength across the
             grain
    Valid    for minutes only, with the tailstock for support
    Errors   an outside diameter that is not larger than the fit is refused
    Source   Roark's Formulas for Stress and Strain, thick ring; workmanship from memory

    >>> round(jam_fit(interference=0.1, diameter=80, outside_diameter=120, modulus=0.8, length=10, friction=0.3), 1)
    8.4
    """
    if outside_diameter <= diameter:
        raise FigureInputError("outside_diameter", outside_diameter, f"more than the fit, {diameter:g} mm")
    pressure = _jam_parts(interference, diameter, outside_diameter, modulus, length)["pressure"][0]
    return friction * pressure * math.pi * diameter**2 * length / 2000
