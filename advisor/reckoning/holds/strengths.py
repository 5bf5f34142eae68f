"""Strength and friction of the work where it is held, low end and typical, defects counted."""

from __future__ import annotations

from functools import lru_cache

from advisor.physics.contact import friction as rubbing
from advisor.physics.glue import WOOD_SHEAR_SHARE
from advisor.physics.teeth import WORKING_FACTOR
from advisor.reckoning.defects import defect_share, slope_share
from advisor.reckoning.ends import CRUSH_DIVISOR
from advisor.reckoning.holds.workmanship import Ends
from advisor.situation import Situation

ALL_ROUND_FORMS = frozenset({"sphere", "ring"})


def stays(situation: Situation) -> bool:
    """Whether the surface that is gripped stays on the finished piece and must come out clean."""
    case = situation.case
    if situation.traits.state == "finished" or situation.traits.form in ALL_ROUND_FORMS:
        return True
    clean = case.work.marks_allowed == "none" and situation.operation in ("finishing", "sanding")
    return clean or situation.purpose in ALL_ROUND_FORMS


@lru_cache(maxsize=2)
def _on_steel(pair: str) -> Ends:
    found = rubbing(pair)
    return Ends(found.low, found.typical)


def friction(situation: Situation) -> Ends:
    """The work against steel jaws."""
    material = situation.material
    if situation.wood is None and material is not None:
        return Ends(material.friction.low, material.friction.typical)
    wet = situation.traits.green or "oily" in situation.traits.conditions
    return _on_steel("steel-wet" if wet else "steel-dry")


def crushing(situation: Situation) -> Ends | None:
    """Pressure in MPa that jaws may put on the work; None where it is not known.

    Wood: 1.5 times the proportional limit across the grain on a tenon that is cut away, once where the surface stays;
    the low end is the 5 % value over 1.2.
    """
    wood = situation.wood
    if wood is not None:
        share = (1.0 if stays(situation) else WORKING_FACTOR) * defect_share(situation)
        return Ends(share * wood.perpendicular.low / CRUSH_DIVISOR, share * wood.perpendicular.typical)
    material = situation.material
    if material is None or material.compressive is None:
        return None
    return Ends(material.compressive.low / CRUSH_DIVISOR, material.compressive.typical)


def splitting(situation: Situation) -> Ends | None:
    """Tension across the grain in MPa, or the tensile strength of what is not wood; None where it is not known."""
    wood = situation.wood
    if wood is not None:
        share = defect_share(situation)
        return Ends(share * wood.tension_perpendicular.low, share * wood.tension_perpendicular.typical)
    material = situation.material
    if material is None or material.tensile is None:
        return None
    return Ends(material.tensile.low, material.tensile.typical)


def root(situation: Situation) -> Ends | None:
    """Bending strength in MPa at the root of a tenon: along the fibers, or across them where they run across."""
    wood = situation.wood
    if wood is None or situation.traits.grain != "along":
        return splitting(situation)
    share = defect_share(situation) * slope_share(situation)
    across = splitting(situation)
    floor = across if across is not None else Ends(0.0, 0.0)
    return Ends(max(share * wood.bending.low, floor.low), max(share * wood.bending.typical, floor.typical))


def shear_cap(situation: Situation) -> Ends | None:
    """Shear in MPa that the face of the work stands beside a glue line; None for what is not wood."""
    wood = situation.wood
    if wood is None:
        return None
    share = WOOD_SHEAR_SHARE * defect_share(situation)
    return Ends(share * wood.shear.low, share * wood.shear.typical)


def brittle(situation: Situation) -> bool:
    """A material that cracks before it gives."""
    return situation.material is not None and situation.material.brittle
