"""What becomes of a wet piece when it dries: how oval, how large to leave it, when the jaws lose their grip."""

from __future__ import annotations

from typing import NamedTuple

from advisor.models import wood as woods
from advisor.models.wood_drying import Shrinks, shrinkages
from advisor.physics import drying as dries
from advisor.reckoning.holds import jawed
from advisor.reckoning.proportions.size import Trial
from advisor.situation import Situation

WET_FROM = 16.0  # percent: drier wood moves as any board in the shop does; common practice, no source
FINISHED_WALL_MM = 10.0  # where nobody said; memory
NOBODY_KNOWS = "unknown"
HOLLOW = frozenset({"bowl", "platter", "box", "hollow-form"})


class Drying(NamedTuple):
    """A wet piece dried to the driest of ordinary rooms.

    Moistures in percent. most and least: percent of the size now, in the direction that shrinks most across the axis
    and in the other one. diameter and oval: the work now, and its longest less its shortest diameter when dry, mm.
    wall: what to leave on a hollow piece, mm, and the part of it that the oval asks for; None for solid work. woods:
    whose figures these are; filled: the table lacks one of them; total: published tangential shrinkage, green to
    oven-dry, percent.
    """

    from_moisture: float
    to_moisture: float
    most: float
    least: float
    diameter: float
    oval: float
    wall: float | None
    wall_of_oval: float | None
    finished_wall: float
    woods: str
    filled: bool
    total: float


class GripDrying(NamedTuple):
    """A gripped tenon when it dries: its oval, the diameter to leave so that it can be trued to its size, both mm, and
    the moisture in percent that may go until the jaws press no more."""

    oval: float
    leave: float
    loosens: float | None


class _Worst(NamedTuple):
    most: float
    least: float
    tangential: float
    name: str
    filled: bool


def _worst(situation: Situation) -> _Worst:
    """The wood, of those it may be, that goes most oval; along the grain next to nothing shrinks."""
    known = situation.match in ("one", "several")
    found = shrinkages(woods.resolve(situation.case.work.material if known else NOBODY_KNOWS))
    start, end = situation.moisture, dries.DRIEST_INDOORS
    across = situation.traits.grain != "along"

    def one(wood: Shrinks) -> _Worst:
        most = dries.drying_shrinkage(total=wood.tangential, from_moisture=start, to_moisture=end)
        least = 0.0 if across else dries.drying_shrinkage(total=wood.radial, from_moisture=start, to_moisture=end)
        return _Worst(most, least, wood.tangential, wood.name, wood.filled)

    worst = max((one(wood) for wood in found), key=lambda entry: entry.most - entry.least)
    label = worst.name if len(found) == 1 else f"{worst.name}, the worst of {len(found)}"
    return worst._replace(name=label)


def drying(situation: Situation) -> Drying | None:
    """What drying does to this piece; None for dry wood and for anything that is not wood.

    Source: Wood Handbook, Table 4-3 and chapter 13; a tenth of the diameter for the wall is common practice, no source.
    """
    if situation.wood is None or situation.moisture < WET_FROM:
        return None
    worst = _worst(situation)
    diameter = situation.body.diameter
    finished = min(situation.case.work.wall or FINISHED_WALL_MM, diameter / 2)
    asked = dries.wall_to_leave(
        diameter=diameter, larger=worst.most, smaller=worst.least, finished_wall=max(finished, 1e-3)
    )
    hollow = situation.purpose in HOLLOW
    return Drying(
        situation.moisture,
        dries.DRIEST_INDOORS,
        worst.most,
        worst.least,
        diameter,
        dries.dried_oval(diameter=diameter, larger=worst.most, smaller=worst.least),
        max(asked, dries.WALL_SHARE * diameter) if hollow else None,
        asked if hollow else None,
        finished,
        worst.name,
        worst.filled,
        worst.tangential,
    )


def grip_drying(situation: Situation, found: Drying, method: str, diameter: float, rpm: float) -> GripDrying:
    """The same for a tenon of this diameter in its jaws.

    The grip is the smallest of ordinary workmanship and the wood the stiffest there is, so that it lets go soonest.
    """
    ways = jawed.ways(Trial(situation, method, rpm).with_sizes({"tenon.diameter": diameter}).job)
    loosens = None
    if ways is not None and situation.wood is not None:
        pressure = min(ways.key.low, ways.crushes.low) / ways.area
        stiff = situation.wood.modulus_perpendicular.high
        loosens = dries.drying_that_loosens(pressure=pressure, modulus=stiff, total=found.total)
    return GripDrying(
        dries.dried_oval(diameter=diameter, larger=found.most, smaller=found.least),
        dries.diameter_to_leave(finished=diameter, shrinkage=found.most),
        loosens,
    )
