"""What drying does to a turned piece: it shrinks, and not evenly, so that what was round becomes oval."""

from __future__ import annotations

from advisor.figure import Grade, figure
from advisor.quantity import FigureInputError, GPa, MPa, mm, mm_or_zero, percent

FIBER_SATURATION = 30.0  # percent; above it drying takes weight and no size; Wood Handbook, chapter 4, from memory
DRIEST_INDOORS = 6.0  # percent, the driest that wood gets in a heated house; memory, Wood Handbook, chapter 13
LEFT_FOR_TRUING_MM = 1.0  # on the radius: the piece never goes back on its old axis; memory
WALL_SHARE = 0.1  # of the diameter; common practice, no source


@figure(
    title="shrinkage on drying from one moisture to another",
    symbol="s",
    equation="S·(M_1 − M_2)/(30·100 − S·(30 − M_1))·100",
    unit="%",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-4-3", "wood-handbook-13"),
    valid="size and moisture change evenly below 30 %; of the size before drying; no collapse, no reaction wood",
    section="5.11",
    symbols={"total": "S", "from_moisture": "M_1", "to_moisture": "M_2"},
)
def drying_shrinkage(total: percent, from_moisture: percent, to_moisture: percent) -> float:
    """How much of its size wood loses across the grain while it dries, in percent of the size it had.

    Formula  s = S·(M_1 − M_2)/(30·100 − S·(30 − M_1))·100, both moistures at most 30
    Inputs   total percent: published shrinkage from green to oven-dry in that direction, from_moisture and to_moisture
             percent
    Gives    percent of the size at from_moisture; 0 where it does not dry
    Valid    linear below fiber saturation, taken at 30 percent; along the grain next to nothing
    Source   Wood Handbook, Table 4-3 for the total; chapter 13 for the relation, from memory

    >>> round(drying_shrinkage(total=9.9, from_moisture=80, to_moisture=6), 2)
    7.92
    """
    if not 0 <= total < 50:
        raise FigureInputError("total", total, "a shrinkage from 0 to 50 percent")
    start, end = (min(moisture, FIBER_SATURATION) for moisture in (from_moisture, to_moisture))
    if end >= start:
        return 0.0
    return 100 * total * (start - end) / (100 * FIBER_SATURATION - total * (FIBER_SATURATION - start))


@figure(
    title="how oval a round piece dries",
    symbol="o",
    equation="d·(s_1 − s_2)/100",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("geometry", "wood-handbook-4-3"),
    valid="straight grain, growth rings nearly flat over the piece; warp and cup come on top",
    section="5.11",
    symbols={"diameter": "d", "larger": "s_1", "smaller": "s_2"},
)
def dried_oval(diameter: mm, larger: percent, smaller: percent) -> float:
    """Longest less shortest diameter of a piece that was turned round and then dried.

    Formula  o = d·(s_1 − s_2)/100
    Inputs   diameter mm as turned, larger and smaller percent: shrinkage in the two directions across the axis. Grain
             along the axis: tangential and radial; grain across it, as in a bowl: tangential and nothing
    Gives    mm
    Valid    straight grain; rings nearly flat over the piece
    Errors   a larger shrinkage that is smaller than the other is refused
    Source   geometry; shrinkage of the Wood Handbook, Table 4-3

    >>> round(dried_oval(diameter=100, larger=7.92, smaller=3.84), 2)
    4.08
    """
    if larger < smaller:
        raise FigureInputError("larger", larger, f"at least the smaller one, {smaller:g} percent")
    return diameter * (larger - smaller) / 100


@figure(
    title="diameter to leave so that it can be trued when dry",
    symbol="d_1",
    equation="(d + 2·a)/(1 − s/100)",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("geometry", "wood-handbook-4-3", "memory"),
    valid="the allowance is for a dry piece that does not go back on its old axis",
    section="5.11",
    symbols={"finished": "d", "shrinkage": "s", "allowance": "a"},
)
def diameter_to_leave(finished: mm, shrinkage: percent, allowance: mm_or_zero = LEFT_FOR_TRUING_MM) -> float:
    """Diameter of a green tenon out of which a true one can be turned after drying.

    Formula  d_1 = (d + 2·a)/(1 − s/100)
    Inputs   finished mm: diameter wanted dry, shrinkage percent in the direction that shrinks most, allowance mm on the
             radius
    Gives    mm
    Valid    the shortest diameter of the dry oval holds the true circle and the allowance
    Errors   a shrinkage of half the size or more is refused
    Source   geometry; shrinkage of the Wood Handbook, Table 4-3; allowance from memory

    >>> round(diameter_to_leave(finished=75, shrinkage=7.92), 1)
    83.6
    """
    if shrinkage >= 50:
        raise FigureInputError("shrinkage", shrinkage, "less than 50 percent")
    return (finished + 2 * allowance) / (1 - shrinkage / 100)


@figure(
    title="wall to leave on a green hollow piece",
    symbol="t",
    equation="(d/2·(s_1 − s_2)/100 + w)/(1 − s_2/100)",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("geometry", "wood-handbook-4-3"),
    valid="even wall, oval inside and outside; practice leaves a tenth of the diameter where that is more",
    section="5.11",
    symbols={"diameter": "d", "larger": "s_1", "smaller": "s_2", "finished_wall": "w"},
)
def wall_to_leave(diameter: mm, larger: percent, smaller: percent, finished_wall: mm) -> float:
    """Wall of a green bowl out of which a round one with the finished wall can be turned when it is dry.

    Formula  t = (d/2·(s_1 − s_2)/100 + w)/(1 − s_2/100)
    Inputs   diameter mm as roughed, larger and smaller percent: shrinkage in the two directions across the axis,
             finished_wall mm
    Gives    mm
    Valid    the shortest outer radius of the dry oval, less the wall wanted, is the longest inner one
    Errors   a larger shrinkage that is smaller than the other is refused
    Source   geometry; shrinkage of the Wood Handbook, Table 4-3

    >>> round(wall_to_leave(diameter=250, larger=7.92, smaller=0, finished_wall=8), 1)
    17.9
    """
    if larger < smaller:
        raise FigureInputError("larger", larger, f"at least the smaller one, {smaller:g} percent")
    return (diameter / 2 * (larger - smaller) / 100 + finished_wall) / (1 - smaller / 100)


@figure(
    title="drying that takes the grip away",
    symbol="ΔM",
    equation="30·100·p/(1000·E·S)",
    unit="%",
    grade=Grade.ROUGH_GUIDE,
    sources=("statics", "wood-handbook-4-3"),
    valid="rigid jaws that are not tightened again; of moisture below 30 %, where shrinking begins",
    section="5.11",
    symbols={"pressure": "p", "modulus": "E", "total": "S"},
)
def drying_that_loosens(pressure: MPa, modulus: GPa, total: percent) -> float:
    """How far the gripped wood may dry until the jaws no longer press on it.

    Formula  ΔM = 30·(p/E)/(S/100): the squeeze p/E is gone when the wood has shrunk by as much
    Inputs   pressure MPa of the jaws, modulus GPa across the grain, total percent: shrinkage from green to oven-dry
    Gives    percent of moisture, below fiber saturation
    Valid    rigid jaws, no creep: creep takes the grip sooner
    Errors   a total of 0 is refused
    Source   statics; shrinkage of the Wood Handbook, Table 4-3

    >>> round(drying_that_loosens(pressure=2.3, modulus=0.8, total=9.9), 2)
    0.87
    """
    if total <= 0:
        raise FigureInputError("total", total, "more than 0 percent")
    return FIBER_SATURATION * 100 * pressure / (1000 * modulus * total)
