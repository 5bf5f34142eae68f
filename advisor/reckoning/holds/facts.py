"""What the rules are told of the work and of one hold; texts and numbers only."""

from __future__ import annotations

from advisor.reckoning.holds import strengths
from advisor.reckoning.holds.margins import HoldFigures, steady_possible
from advisor.reckoning.holds.methods import SPURS, groups
from advisor.reckoning.holds.need import overhang
from advisor.situation import Situation

Value = str | int | float

OWN_JAWS = frozenset({"jaws-on-tenon", "long-jaws", "three-jaw", "four-jaw-independent"})
CONDITION_KEYS = {"check": "check", "live-edge": "live_edge", "oily": "oily"}


def yes_no(value: bool) -> str:
    """The rules' word for a truth value."""
    return "yes" if value else "no"


def yes_no_unknown(value: bool | None) -> str:
    """The same where nobody may have said."""
    return "unknown" if value is None else yes_no(value)


def family(situation: Situation) -> str:
    """Wood, or the family of the material; unknown when nobody knows what it is."""
    if situation.wood is not None:
        return "wood"
    if situation.material is None:
        return "unknown"
    return "wood" if situation.material.is_wood else situation.material.family


def sticks(situation: Situation) -> str:
    """Whether an adhesive holds this stuff."""
    if situation.wood is not None:
        return "yes"
    material = situation.material
    return "unknown" if material is None else yes_no(material.takes_glue != "no")


def _sizes(situation: Situation) -> dict[str, Value]:
    body = situation.body
    return {
        "diameter_mm": body.diameter,
        "length_mm": body.length,
        "ratio": body.length / body.diameter,
        "end_mm": body.end_diameter,
        "mass_kg": body.mass,
    }


def _work(situation: Situation) -> dict[str, Value]:
    traits = situation.traits
    return {
        "family": family(situation),
        "form": traits.form,
        "state": traits.state,
        "grain": traits.grain,
        "operation": situation.operation,
        "wet": yes_no(traits.green),
        "sticks": sticks(situation),
    }


def reach_values(situation: Situation) -> dict[str, Value]:
    """Keys of the one fact by which the rules order the methods: what an old hand would reach for."""
    machine, body, hold = situation.case.machine, situation.body, situation.case.hold
    shares = {
        "bore_share": None if machine.spindle_bore is None else body.diameter / machine.spindle_bore,
        "bed_share": None if machine.between_centers is None else body.length / machine.between_centers,
    }
    return {
        **_work(situation),
        "purpose": situation.purpose,
        "machine": situation.lathe.kind,
        "diameter_mm": body.diameter,
        "length_mm": body.length,
        "ratio": body.length / body.diameter,
        "mass_kg": body.mass,
        "live_edge": yes_no("live-edge" in situation.traits.conditions),
        "planned": hold.method or "unknown",
        "offset_share": (situation.case.work.offset or 0.0) / body.diameter,
        "rear_mm": hold.rear_overhang or 0.0,
        **{key: share for key, share in shares.items() if share is not None},
    }


def _held(situation: Situation, figures: HoldFigures, chosen: bool, named: bool) -> dict[str, Value]:
    case = situation.case
    glue = case.hold.glue
    conditions = situation.traits.conditions
    return {
        "method": figures.method,
        "machine": situation.lathe.kind,
        "group": groups()[figures.method],
        "tail": "up" if figures.tail_up else "away",
        "named": yes_no(named or chosen),
        "marks": "stay" if strengths.stays(situation) else "gone",
        "given": yes_no(figures.given),
        "glue": (glue.kind if glue is not None else None) or "unknown",
        "cured": yes_no_unknown(glue.cured if glue is not None else None),
        "nose": case.machine.nose or "unknown",
        "rotation": case.cut.rotation or "forward",
        "drawbar": yes_no_unknown(case.machine.drawbar),
        "model": yes_no(figures.typical is not None),
        "slips": yes_no(figures.slips),
        "steady": yes_no(steady_possible(situation)),
        **{key: yes_no(word in conditions) for word, key in CONDITION_KEYS.items()},
    }


def _numbers(situation: Situation, figures: HoldFigures) -> dict[str, float | None]:
    sizes, case, body = figures.sizes, situation.case, situation.body
    size, screwed = figures.size, groups()[figures.method] == "screwed" or "count" in figures.sizes
    steady = figures.steady_typical
    chuck = case.hold.chuck
    jaws = chuck.jaw_depth if chuck is not None else None
    ranged = chuck if figures.method in OWN_JAWS else None
    depth = sizes.get("depth", None if screwed else sizes.get("length"))
    return {
        "low": figures.low,
        "typical": figures.typical,
        "divided": figures.divided,
        "catch": figures.catch,
        "size_share": None if size is None else size / body.diameter,
        "overhang_ratio": None if not size else overhang(situation) / size,
        "wall_mm": sizes.get("wall", case.work.wall),
        "open_share": size / ranged.jaw_largest if ranged is not None and ranged.jaw_largest and size else None,
        "close_share": size / ranged.jaw_smallest if ranged is not None and ranged.jaw_smallest and size else None,
        "depth_share": depth / jaws if depth and jaws else None,
        "steady_divided": None if steady is None else steady / figures.steady_divisor,
    }


def lighter(situation: Situation, figures: HoldFigures) -> float:
    """Share of the ordinary cut that spurs in end grain carry with their whole divisor; 0 where nothing is bargained.

    A force that the person gave is not bargained with.
    """
    spurs = figures.method in SPURS and not situation.side_grain
    return figures.divided or 0.0 if spurs and not situation.cut.given else 0.0


def hold_fact(situation: Situation, figures: HoldFigures, chosen: bool, named: bool) -> dict[str, Value]:
    """Keys of the fact `hold` for one method; a number nobody has is left out."""
    numbers = {key: value for key, value in _numbers(situation, figures).items() if value is not None}
    return {**_work(situation), **_sizes(situation), **_held(situation, figures, chosen, named), **numbers}
