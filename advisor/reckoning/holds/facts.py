"""What the rules are told of the work and of one hold; texts and numbers only."""

from __future__ import annotations

from advisor.physics import rim
from advisor.reckoning.holds import strengths
from advisor.reckoning.holds.margins import HoldFigures, steady_possible
from advisor.reckoning.holds.methods import groups
from advisor.reckoning.holds.need import overhang
from advisor.situation import Situation

Value = str | int | float

CONDITION_KEYS = {
    "check": "check",
    "crack": "crack",
    "through-crack": "through_crack",
    "ring-shake": "ring_shake",
    "punky": "punky",
    "rot": "rot",
    "spalted": "spalted",
    "bark-inclusion": "bark",
    "live-edge": "live_edge",
    "void": "void",
    "pith": "pith",
    "knot": "knot",
    "oily": "oily",
    "worm-holes": "worm_holes",
    "burl": "burl",
    "nails": "nails",
    "bowed": "bowed",
}
OFF_CENTER_SHARE = 0.1  # a stated offset above this share of the diameter is meant


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
        "purpose": situation.purpose,
        "wet": yes_no(traits.green),
        "machine": situation.lathe.kind,
        "sticks": sticks(situation),
    }


def _off_center(situation: Situation) -> bool:
    offset = situation.case.work.offset
    meant = offset is not None and offset > OFF_CENTER_SHARE * situation.body.diameter
    return meant or situation.case.hold.method == "offset-faceplate"


def _rear_bar(situation: Situation) -> bool:
    hold, machine = situation.case.hold, situation.case.machine
    if hold.method == "through-spindle" or (hold.rear_overhang or 0.0) > 0:
        return True
    bore, bed = machine.spindle_bore, machine.between_centers
    fits = bore is not None and situation.body.diameter <= bore
    return fits and bed is not None and situation.body.length > bed


def reach_values(situation: Situation) -> dict[str, Value]:
    """Keys of the one fact by which the rules order the methods: what an old hand would reach for."""
    conditions = situation.traits.conditions
    return {
        **_work(situation),
        **_sizes(situation),
        "live_edge": yes_no("live-edge" in conditions),
        "spalted": yes_no("spalted" in conditions),
        "void": yes_no("void" in conditions),
        "burl": yes_no("burl" in conditions),
        "bark": yes_no("bark-inclusion" in conditions),
        "drilled": yes_no(situation.traits.form == "tube"),
        "off_center": yes_no(_off_center(situation)),
        "rear_bar": yes_no(_rear_bar(situation)),
    }


def _held(situation: Situation, figures: HoldFigures, chosen: bool, named: bool) -> dict[str, Value]:
    case = situation.case
    glue = case.hold.glue
    conditions = situation.traits.conditions
    return {
        "method": figures.method,
        "group": groups()[figures.method],
        "tail": "up" if figures.tail_up else "away",
        "chosen": yes_no(chosen),
        "named": yes_no(named or chosen),
        "marks": "stay" if strengths.stays(situation) else "gone",
        "reversed": yes_no(situation.reversed_piece),
        "given": yes_no(figures.given),
        "glue": (glue.kind if glue is not None else None) or "unknown",
        "cured": yes_no_unknown(glue.cured if glue is not None else None),
        "nose": case.machine.nose or "unknown",
        "rotation": case.cut.rotation or "forward",
        "drawbar": yes_no_unknown(case.machine.drawbar),
        "brittle": yes_no(strengths.brittle(situation)),
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
    return {
        "low": figures.low,
        "typical": figures.typical,
        "divided": figures.divided,
        "size_mm": size,
        "size_share": None if size is None else size / body.diameter,
        "overhang_ratio": None if not size else overhang(situation) / size,
        "wall_mm": sizes.get("wall", case.work.wall),
        "depth_mm": sizes.get("depth", None if screwed else sizes.get("length")),
        "jaw_depth_mm": chuck.jaw_depth if chuck is not None else None,
        "screw_length_mm": sizes.get("length") if screwed else None,
        "screw_count": sizes.get("count"),
        "energy_j": rim.spinning_energy(mass=body.mass, diameter=body.diameter, rpm=figures.rpm),
        "steady_divided": None if steady is None else steady / figures.steady_divisor,
        "catch": figures.catch,
    }


def hold_fact(situation: Situation, figures: HoldFigures, chosen: bool, named: bool) -> dict[str, Value]:
    """Keys of the fact `hold` for one method; a number nobody has is left out."""
    numbers = {key: value for key, value in _numbers(situation, figures).items() if value is not None}
    return {**_work(situation), **_sizes(situation), **_held(situation, figures, chosen, named), **numbers}
