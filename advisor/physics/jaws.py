"""Jaws on a tenon, in a recess, at speed, and collets.

Numbers are before any safety factor.
"""

from __future__ import annotations

import math

from advisor.figure import Grade, NoAnswer, figure
from advisor.physics.balance import per_minute
from advisor.quantity import (
    FigureInputError,
    MPa,
    N,
    factor_number,
    friction_number,
    half_angle_deg,
    kg_m,
    mm,
    mm_or_zero,
    part_number,
)

DOVETAIL_GAIN = 1.25  # moment of a dovetail seated on its shoulder in undamaged wood; memory
CONTACT_FITTING = 0.7  # share of the girth that touches on the jaws' true circle; memory
CONTACT_OFF_CIRCLE = 0.3  # on any other diameter; memory


@figure(
    title="torque that jaws carry by friction",
    symbol="T",
    equation="µ·F_g·d/2",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("statics",),
    valid="even pressure round the tenon, rigid jaws",
    section="5.1",
    symbols={"friction": "µ", "grip": "F_g", "diameter": "d"},
)
def jaw_torque(friction: friction_number, grip: N, diameter: mm) -> float:
    """Torque at which a tenon turns in its jaws.

    Formula  T = µ·F_g·d/2
    Inputs   friction (low end), grip N: the jaws' radial forces added up, diameter mm of the tenon
    Gives    N·m
    Valid    even pressure, rigid jaws; the grip of a hand-tightened chuck is 3 to 10 kN (memory)
    Source   statics

    >>> round(jaw_torque(friction=0.35, grip=4000, diameter=50), 1)
    35.0
    """
    return friction * grip * diameter / 2000


@figure(
    title="moment that tips a tenon out of its jaws",
    symbol="M",
    equation="F_g·max(h/12 + µ·d/π, µ·R_s)",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("statics",),
    valid="even pressure round the tenon, rigid jaws; a shoulder counts only where it sits on the jaws",
    section="5.1",
    symbols={"friction": "µ", "grip": "F_g", "diameter": "d", "length": "h", "shoulder_radius": "R_s"},
)
def jaw_moment(
    friction: friction_number, grip: N, diameter: mm, length: mm, shoulder_radius: mm_or_zero | None = None
) -> float:
    """Moment at which a tenon tips out of its jaws, with or without a shoulder on the jaw faces.

    Formula  M = F_g·(h/12 + µ·d/π); on a shoulder µ·F_g·R_s, whichever is larger
    Inputs   friction (low end), grip N, diameter mm, length mm gripped, shoulder_radius mm or nothing
    Gives    N·m
    Valid    even pressure, rigid jaws
    Source   statics; pressure summed over the gripped surface

    >>> round(jaw_moment(friction=0.35, grip=4000, diameter=50, length=8), 1)
    24.9
    """
    bare = length / 12 + friction * diameter / math.pi
    return grip * max(bare, friction * (shoulder_radius or 0.0)) / 1000


@figure(
    title="grip that crushes a tenon",
    symbol="F_g",
    equation="c·π·d·h·p",
    unit="N",
    grade=Grade.ESTIMATE,
    sources=("statics", "wood-handbook-5"),
    valid="contact 0.7 on the jaws' true circle, 0.3 off it; strength at the worst jaw, across the grain",
    section="5.1",
    symbols={"contact": "c", "diameter": "d", "length": "h", "strength": "p"},
)
def jaw_crush_force(diameter: mm, length: mm, strength: MPa, contact: part_number = CONTACT_FITTING) -> float:
    """Grip at which the jaws crush the wood of a tenon.

    Formula  F_g = c·π·d·h·p
    Inputs   diameter mm, length mm gripped, strength MPa across the grain, contact: share of the girth that touches
    Gives    N
    Valid    strength of the worst jaw, which bears across the grain; the average round a tenon is higher and not safe
    Source   statics; strengths of the Wood Handbook, chapter 5; contact from memory

    >>> round(jaw_crush_force(diameter=50, length=8, strength=10.1), -2)
    8900.0
    """
    return contact * math.pi * diameter * length * strength


@figure(
    title="moment that breaks a tenon off at its root",
    symbol="M",
    equation="f·π·d³/32",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("roark",),
    valid="solid round tenon; bending strength along the axis, tension across the grain for a bowl blank",
    section="5.1",
    symbols={"diameter": "d", "strength": "f"},
)
def tenon_root_moment(diameter: mm, strength: MPa) -> float:
    """Moment at which a round tenon breaks off.

    Formula  M = f·π·d³/32
    Inputs   diameter mm, strength MPa: bending strength with the grain along the axis, tension across the grain in a
             bowl blank
    Gives    N·m
    Valid    solid round section
    Source   beam theory

    >>> round(tenon_root_moment(diameter=50, strength=3), 1)
    36.8
    """
    return strength * math.pi * diameter**3 / 32000


@figure(
    title="grip that splits a recess",
    symbol="F_g",
    equation="π·d·h·f·(D² − d²)/(D² + d²)",
    unit="N",
    grade=Grade.ESTIMATE,
    sources=("roark",),
    valid="ring of the recess depth, the floor under it left out; no divisor in it",
    section="5.2",
    symbols={"diameter": "d", "depth": "h", "outside_diameter": "D", "tension_perpendicular": "f"},
)
def recess_force(diameter: mm, depth: mm, outside_diameter: mm, tension_perpendicular: MPa) -> float:
    """Outward grip at which jaws split the wood round a recess: far below what a key can apply.

    Formula  F_g = π·d·h·f_t90·(D² − d²)/(D² + d²)
    Inputs   diameter mm and depth mm of the recess, outside_diameter mm of the wood round it, tension_perpendicular MPa
    Gives    N, without a divisor
    Valid    thick ring under inner pressure, floor left out
    Errors   an outside diameter that is not larger than the recess is refused
    Source   Roark's Formulas for Stress and Strain, thick ring

    >>> round(recess_force(diameter=50, depth=4, outside_diameter=100, tension_perpendicular=3))
    1131
    """
    if outside_diameter <= diameter:
        raise FigureInputError("outside_diameter", outside_diameter, f"more than the recess, {diameter:g} mm")
    ring = (outside_diameter**2 - diameter**2) / (outside_diameter**2 + diameter**2)
    return math.pi * diameter * depth * tension_perpendicular * ring


@figure(
    title="speed at which jaws lose the grip that is needed",
    symbol="n",
    equation="(30/π)·√((F_0/S − F_n)/J)",
    unit="rpm",
    grade=Grade.ESTIMATE,
    sources=("vdi-3106",),
    valid="jaws that grip from outside; never above the speed marked on the chuck",
    section="5.3",
    symbols={"grip": "F_0", "needed_grip": "F_n", "safety": "S", "jaw_moment": "J"},
)
def chuck_speed(grip: N, needed_grip: N, safety: factor_number, jaw_moment: kg_m) -> float:
    """Speed at which the jaws' own weight has taken away the grip beyond what the cut needs.

    Formula  n = (30/π)·√((F_0/S − F_n)/J), J = Σ m·r of the jaws
    Inputs   grip N at rest, needed_grip N, safety (1.5 and more), jaw_moment kg·m: mass times radius of the jaws
    Gives    rpm
    Valid    gripping from outside; from inside the grip grows, and the splitting of the recess rules
    Errors   no answer where the grip at rest is already too little
    Source   VDI 3106:2004

    >>> round(chuck_speed(grip=18000, needed_grip=4500, safety=1.5, jaw_moment=0.48))
    1194
    """
    spare = grip / safety - needed_grip
    if spare <= 0:
        raise NoAnswer("the grip at rest over its safety is already no more than what is needed")
    return per_minute(math.sqrt(spare / jaw_moment))


@figure(
    title="grip of a collet",
    symbol="F_g",
    equation="F_d/tan(α + atan(µ))",
    unit="N",
    grade=Grade.ESTIMATE,
    sources=("statics",),
    valid="clean collet of the right size; on wood the crushing of the surface rules",
    section="5.4",
    symbols={"draw_force": "F_d", "half_angle": "α", "friction": "µ"},
)
def collet_grip(draw_force: N, half_angle: half_angle_deg, friction: friction_number) -> float:
    """Radial grip that a draw force makes in a collet.

    Formula  F_g = F_d/tan(α + atan µ)
    Inputs   draw_force N, half_angle degrees of the collet's cone, friction in the cone
    Gives    N
    Valid    clean collet of the right size
    Errors   no answer where the cone is too blunt to close
    Source   statics of a wedge

    >>> round(collet_grip(draw_force=5000, half_angle=8, friction=0.1), -2)
    20500.0
    """
    lean = math.radians(half_angle) + math.atan(friction)
    if lean >= math.pi / 2:
        raise NoAnswer("a cone this blunt with this friction does not close")
    return draw_force / math.tan(lean)
