"""How large a hold must be for a load: the capacities of jaws, recesses, screws and glue turned round.

Each takes the load and a divisor and gives the least size; what the piece leaves room for is not known here.
"""

from __future__ import annotations

import math

from advisor.figure import Grade, NoAnswer, figure
from advisor.physics.jaws import CONTACT_FITTING
from advisor.physics.screws import WOOD_SCREW
from advisor.quantity import MPa, N, Nm, factor_number, gravity_number, mm, part_number


@figure(
    title="diameter of a tenon that does not snap",
    symbol="d",
    equation="(32·S·M/(π·f))^(1/3)",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("roark",),
    valid="solid round tenon; bending strength along the axis, tension across the grain for a bowl blank",
    section="5.1",
    symbols={"moment": "M", "strength": "f", "divisor": "S"},
)
def tenon_root_diameter(moment: Nm, strength: MPa, divisor: factor_number) -> float:
    """Least diameter of a round tenon whose root stands a moment.

    Formula  d = (32·S·M/(π·f))^(1/3)
    Inputs   moment N·m, strength MPa: bending strength with the grain along the axis, tension across the grain in a
             bowl blank, divisor
    Gives    mm
    Valid    solid round section
    Source   beam theory

    >>> round(tenon_root_diameter(moment=36.8, strength=3, divisor=1), 1)
    50.0
    """
    return math.pow(32000 * divisor * moment / (math.pi * strength), 1 / 3)


@figure(
    title="length of a tenon that its jaws do not crush",
    symbol="h",
    equation="F_g/(c·π·d·p)",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("statics", "wood-handbook-5"),
    valid="contact 0.7 on the jaws' true circle, 0.3 off it; never longer than the jaws are deep",
    section="5.1",
    symbols={"grip": "F_g", "diameter": "d", "strength": "p", "contact": "c"},
)
def tenon_grip_length(grip: N, diameter: mm, strength: MPa, contact: part_number = CONTACT_FITTING) -> float:
    """Least length of a tenon that stands the grip of its jaws without being crushed.

    Formula  h = F_g/(c·π·d·p)
    Inputs   grip N: the jaws' radial forces added up, diameter mm, strength MPa across the grain, contact: share of the
             girth that touches
    Gives    mm
    Valid    strength of the worst jaw, which bears across the grain
    Source   statics; strengths of the Wood Handbook, chapter 5; contact from memory

    >>> round(tenon_grip_length(grip=8884, diameter=50, strength=10.1), 2)
    8.0
    """
    return grip / (contact * math.pi * diameter * strength)


@figure(
    title="wood that a recess needs round it",
    symbol="D",
    equation="d·√((1 + q)/(1 − q)), q = F_g/(π·d·h·f)",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("roark",),
    valid="ring of the recess depth under inner pressure, the floor under it left out; no divisor in it",
    section="5.2",
    symbols={"grip": "F_g", "diameter": "d", "depth": "h", "tension_perpendicular": "f"},
)
def recess_outside_diameter(grip: N, diameter: mm, depth: mm, tension_perpendicular: MPa) -> float:
    """Least outside diameter of the wood round a recess that stands the outward grip of its jaws.

    Formula  D = d·√((1 + q)/(1 − q)), q = F_g/(π·d·h·f_t90)
    Inputs   grip N, diameter mm and depth mm of the recess, tension_perpendicular MPa
    Gives    mm; the wall is (D − d)/2
    Valid    thick ring under inner pressure, floor left out
    Errors   no answer where even a wall without end would split
    Source   Roark's Formulas for Stress and Strain, thick ring

    >>> round(recess_outside_diameter(grip=1131, diameter=50, depth=4, tension_perpendicular=3))
    100
    """
    share = grip / (math.pi * diameter * depth * tension_perpendicular)
    if share >= 1:
        raise NoAnswer("a recess this small and shallow splits whatever the wood round it")
    return diameter * math.sqrt((1 + share) / (1 - share))


@figure(
    title="glued face that carries a load",
    symbol="d",
    equation="(16·S/π·(T/τ + 2·M/σ))^(1/3)",
    unit="mm",
    grade=Grade.ROUGH_GUIDE,
    sources=("roark", "memory"),
    valid="whole round face, sound joint; the strength is what is not known",
    section="5.7",
    symbols={"torque": "T", "moment": "M", "shear": "τ", "peel": "σ", "divisor": "S"},
)
def glue_face_diameter(torque: Nm, moment: Nm, shear: MPa, peel: MPa, divisor: factor_number) -> float:
    """Least diameter of a glued or taped round face for a torque and a moment that act together.

    Formula  d = (16·S/π·(T/τ + 2·M/σ))^(1/3)
    Inputs   torque N·m, moment N·m, shear MPa and peel MPa with all their derates, divisor (5)
    Gives    mm
    Valid    whole round face; the shares of both loads added up
    Source   beam and torsion theory; divisor from memory

    >>> round(glue_face_diameter(torque=42.4, moment=0, shear=1, peel=0.5, divisor=1), 1)
    60.0
    """
    return math.pow(16000 * divisor / math.pi * (torque / shear + 2 * moment / peel), 1 / 3)


@figure(
    title="screws that carry a torque",
    symbol="n",
    equation="S·T/(V·r), rounded up",
    unit="",
    grade=Grade.ESTIMATE,
    sources=("statics", "wood-handbook-8-4"),
    valid="equal screws evenly on one circle in side grain; never fewer than three",
    section="5.5",
    symbols={"torque": "T", "lateral": "V", "radius": "r", "divisor": "S"},
)
def screw_count(torque: Nm, lateral: N, radius: mm, divisor: factor_number) -> float:
    """Least number of screws on a circle for a torque.

    Formula  n = S·T/(V·r), rounded up, at least 3
    Inputs   torque N·m, lateral N that one screw carries sideways, radius mm of the circle, divisor
    Gives    a whole number
    Valid    rigid plate, equal screws; tipping is another matter
    Errors   screws that carry nothing give no answer
    Source   statics; side loads of the Wood Handbook, Table 8-4

    >>> screw_count(torque=100, lateral=1030, radius=40, divisor=3)
    8.0
    """
    if lateral <= 0:
        raise NoAnswer("screws that carry nothing sideways")
    return float(max(LEAST_SCREWS, math.ceil(divisor * torque * 1000 / (lateral * radius) - 1e-9)))


@figure(
    title="thread that a pull needs",
    symbol="L",
    equation="S·W/(108.25·G²·D)",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-8", "nds"),
    valid="wood screw in seasoned side grain with a proper lead hole; twice as much in green wood",
    section="5.5",
    symbols={"pull": "W", "gravity": "G", "diameter": "D", "divisor": "S"},
)
def thread_length(pull: N, gravity: gravity_number, diameter: mm, divisor: factor_number) -> float:
    """Least thread in the wood for a straight pull on one wood screw in side grain.

    Formula  L = S·W/(108.25·G²·D), N and mm
    Inputs   pull N on one screw, gravity G (oven-dry mass over volume at 12 %), diameter mm of the shank, divisor
    Gives    mm
    Valid    seasoned side grain, lead hole 70 % (softwood) or 90 % (hardwood) of the root diameter
    Source   Wood Handbook, chapter 8; National Design Specification for Wood Construction

    >>> round(thread_length(pull=4550, gravity=0.63, diameter=4.17, divisor=1), 1)
    25.4
    """
    return divisor * pull / (WOOD_SCREW * gravity**2 * diameter)


LEAST_SCREWS = 3  # two are a hinge; common practice, no source
