"""Figures and words -> flat facts for the rules. Nothing here compares a figure with a threshold: rules do."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from typing import get_args

from advisor.engine import Fact
from advisor.models.case import METHODS, Condition
from advisor.reckoning import holds
from advisor.reckoning.balancing import Counterweight, balance_of, words_of
from advisor.reckoning.slender import Slender
from advisor.reckoning.speed import Speed
from advisor.reckoning.whirl import WHIRL_PASSED
from advisor.situation import Situation
from advisor.situation.shape import CHECKS, SOFT_WOOD
from advisor.units import MM_PER_INCH, NEWTONS_PER_POUND, two_figures

Value = str | float
POUNDS_PER_KG = 2.20462
GRAMS_PER_OUNCE = 28.349523125
MOST_TOLD_MM = 20.0  # a bar that springs further folds up: the sum means nothing any more
CONDITIONS: tuple[str, ...] = get_args(Condition)


def flag(value: bool | None) -> str:
    """yes, no, or unknown where nobody said."""
    return "unknown" if value is None else "yes" if value else "no"


def known(values: Mapping[str, Value | None]) -> dict[str, Value]:
    """Only what is known: a missing number is left out, so that no rule can mistake it for zero."""
    return {key: value for key, value in values.items() if value is not None and value == value}


def _share(part: float | None, whole: float | None) -> float | None:
    return None if part is None or not whole else part / whole


def turns(value: float, up: bool = False) -> str:
    """A speed to two figures, a limit unless said otherwise."""
    return f"{two_figures(value, up):.0f} rpm"


def newtons(value: float, down: bool = False) -> str:
    """A force as two people would say it, to two figures; a limit down."""
    if not math.isfinite(value):
        return "no thrust at all"
    told = []
    for unit, word in ((1.0, "N"), (NEWTONS_PER_POUND, "lbf")):
        step = 10.0 ** max(math.floor(math.log10(value / unit)) - 1, 0) if value > 0 else 1.0
        steps = value / unit / step
        told.append(f"{(math.floor(steps + 1e-9) if down else round(steps)) * step:.0f} {word}")
    return f"{told[0]} ({told[1]})"


def about(value: float) -> str:
    """A number to two figures, without an exponent."""
    return f"{float(f'{value:.2g}'):g}"


def length(value: float, places: int = 0) -> str:
    """A length in both units, its millimeters to so many places."""
    return f"{value:.{places}f} mm ({about(value / MM_PER_INCH)} in)"


def mass(value: float) -> str:
    """The mass of a machine in both units, up: it is asked for."""
    return f"{value:.0f} kg ({two_figures(value * POUNDS_PER_KG, True):.0f} lb)"


def small_mass(grams: float) -> str:
    """A small mass in both units."""
    return f"{grams:.0f} g ({about(grams / GRAMS_PER_OUNCE)} oz)"


def family(situation: Situation) -> str:
    """wood, the family of another material, or unknown."""
    if situation.wood is not None:
        return "wood"
    return situation.material.family if situation.material is not None else "unknown"


def condition_flags(situation: Situation) -> dict[str, str]:
    """One yes/no key for every condition word."""
    found = situation.traits.conditions
    return {word.replace("-", "_"): flag(word in found) for word in CONDITIONS if word != "sound"}


def blank(situation: Situation) -> Fact:
    """The piece as it is: words, sizes, faults."""
    work, body = situation.case.work, situation.body
    crack = work.crack
    values: dict[str, Value | None] = {
        "form": situation.traits.form,
        "grain": situation.traits.grain,
        "wet": flag(situation.traits.green),
        "moisture": situation.moisture_word,
        "crack_runs": (crack.runs if crack is not None else None) or "unknown",
        "crack_across_share": _share(crack.across if crack is not None else None, body.diameter),
        "crack_along_share": _share(crack.along if crack is not None else None, body.length),
        "crack_gap_mm": crack.gap if crack is not None else None,
        "slope": work.grain_slope,
        **condition_flags(situation),
    }
    words = {
        "material": work.material,
        "diameter": f"{body.diameter:.0f} mm ({body.diameter / MM_PER_INCH:.3g} in)",
        "mass": f"{body.mass:.2g} kg ({body.mass * POUNDS_PER_KG:.2g} lb)",
    }
    return Fact("blank", known(values), words)


def _untold(situation: Situation, speed: Speed) -> list[str]:
    """Which of the three numbers that large work asks of a lathe nobody gave."""
    lathe = situation.case.machine
    given = (("swing", lathe.swing), ("min_rpm", speed.minimum), ("mass", lathe.mass))
    return [name for name, value in given if value is None]


def _and_list(names: Iterable[str]) -> str:
    """One, two or more names in a sentence."""
    *first, last = [*names] or [""]
    return f"{', '.join(first)} and {last}" if first else last


def machine(situation: Situation, tail_up: bool, speed: Speed) -> Fact:
    """The lathe against this piece."""
    machine_, body, hold = situation.case.machine, situation.body, situation.case.hold
    top, ceiling = speed.fastest, speed.ceiling.value
    untold = _untold(situation, speed)
    inches = body.diameter / MM_PER_INCH
    values: dict[str, Value | None] = {
        "machine": situation.lathe.kind,
        "nose": machine_.nose or "unknown",
        "rotation": situation.case.cut.rotation or "forward",
        "nose_lock": flag(machine_.nose_lock),
        "brake": flag(machine_.brake),
        "drawbar": flag(machine_.drawbar),
        "tail": "up" if tail_up else "away",
        "state": situation.traits.state,
        "told": 3.0 - len(untold),
        "outboard": flag(bool(hold.outboard)),
        "swing_share": _share(body.diameter, machine_.swing),
        "carriage_share": _share(body.diameter, machine_.swing_over_carriage),
        "bed_share": _share(body.length, machine_.between_centers),
        "runaway": None if top is None else top * inches,
        "set_share": _share(machine_.rpm_set, ceiling),
        "low_over_ceiling": _share(speed.minimum, ceiling),
        "low_over_start": _share(speed.minimum, speed.wished_start),
        "rear_mm": hold.rear_overhang,
        "rear_ratio": _share(hold.rear_overhang, body.end_diameter),
        "hours_mounted": hold.left_mounted,
        "power_share": _share(_power(situation, speed.start), machine_.power),
        "diameter_mm": body.diameter,
        "mass_kg": body.mass,
    }
    return Fact("machine", known(values), _machine_words(situation, untold, speed))


def _machine_words(situation: Situation, untold: Sequence[str], speed: Speed) -> dict[str, str]:
    """What a sentence about the lathe may say."""
    lathe, body = situation.case.machine, situation.body
    inches = body.diameter / MM_PER_INCH
    return {
        "diameter": f"{body.diameter:.0f} mm ({inches:.3g} in)",
        "mass": f"{body.mass:.0f} kg ({body.mass * POUNDS_PER_KG:.0f} lb)",
        "untold": _and_list(name.replace("min_rpm", "lowest speed") for name in untold),
        "untold_fields": _and_list(f"machine.{name}" for name in untold),
        "low": f"{speed.minimum or 0:.0f} rpm",
        "top": f"{speed.fastest or 0:.0f} rpm",
        "ceiling": turns(speed.ceiling.value),
        "start": turns(speed.wished_start),
        "governed_by": speed.ceiling.name,
        "safe_top": turns(9000 / inches),
        "bed": f"{lathe.between_centers or 0:.0f} mm",
        "length": f"{body.length:.0f} mm",
        "swing": f"{lathe.swing or 0:.0f} mm",
        "carriage": f"{lathe.swing_over_carriage or 0:.0f} mm",
    }


def _power(situation: Situation, rpm: float) -> float:
    """Power in W that the cut draws at its mean force."""
    cut = situation.cut
    return (cut.force * cut.arm * 1e-3 + cut.torque) * 2 * math.pi * rpm / 60


def person(situation: Situation) -> Fact:
    """Who breathes the dust."""
    person_ = situation.case.person
    values: dict[str, Value | None] = {
        "family": family(situation),
        "wet": flag(situation.traits.green),
        "spalted": flag(bool(situation.traits.conditions & SOFT_WOOD)),
        "operation": situation.operation,
        "extraction": flag(person_.extraction),
        "respirator": person_.respirator or "unknown",
        "asthma": flag(person_.asthma),
        "others": flag(person_.others_in_room),
        "use": situation.case.work.use or "unknown",
    }
    return Fact("person", known(values), {"material": situation.case.work.material})


OPEN = CHECKS | {"punky", "rot"}
LEAKY = OPEN | {"worm-holes", "bark-inclusion", "void", "spalted"}
HIDING = frozenset({"spalted", "void", "burl", "bark-inclusion"})


def reach(situation: Situation) -> Fact:
    """The words and sizes by which an old hand knows what to reach for."""
    hiding = bool(situation.traits.conditions & HIDING)
    return Fact("reach", {**holds.reach_values(situation), "hidden": flag(hiding)})


def hold(situation: Situation, figures: holds.HoldFigures, chosen: bool) -> Fact:
    """One method against this piece: its margins, sizes and what may speak against it."""
    case, conditions = situation.case, situation.traits.conditions
    kit = [word for word in case.hold.kit or () if word in METHODS]
    screws, vacuum = case.hold.screws, case.hold.vacuum
    values = holds.hold_fact(situation, figures, chosen, figures.method in kit)
    lighter = holds.lighter(situation, figures)
    extra: dict[str, Value | None] = {
        "alone": flag(kit == [figures.method]),
        "faulty": flag(bool(conditions & OPEN)),
        "soft": flag(bool(conditions & SOFT_WOOD)),
        "leaks": flag(bool(conditions & LEAKY)),
        "locked": flag(bool(case.machine.nose_lock)),
        "gauge": flag(vacuum is not None and vacuum.gauge is not None),
        "screw_kind": (screws.kind if screws is not None else None) or "unknown",
        "bore_share": _share(situation.body.diameter, case.machine.spindle_bore),
        "steady_divided": values.get("steady_divided", 0.0),
        "lighter": lighter,
    }
    light = newtons(lighter * situation.cut.force, down=True)
    return Fact("hold", {**values, **known(extra)}, {"light": light})


def speed_fact(situation: Situation, speed: Speed) -> Fact:
    """Ceiling, start and what they carry."""
    wanted, body = situation.case.cut.wanted_rpm, situation.body
    weight = balance_of(situation, speed.balanced)
    fixing = weight.weight
    whip = None if speed.whips is None else speed.whips[1] / WHIRL_PASSED
    values: dict[str, Value | None] = {
        "state": situation.traits.state,
        "operation": situation.operation,
        "governed_by": speed.ceiling.name,
        "offset_from": "shape" if "by shape" in situation.body.offset_from else "measured",
        "ceiling_rpm": speed.ceiling.value,
        "wanted_share": _share(wanted, speed.ceiling.value),
        "energy_j": speed.energy,
        "mass_kg": body.mass,
        "walk_share": _share(speed.ceiling.value, speed.walks),
        "move_mm": max((move.distance for move in weight.moves), default=None),
        "couple_share": _share(weight.couple, body.mass * body.offset * body.length / 2) or 0.0,
        "counterweight_g": fixing.grams if fixing is not None else None,
        "set_over_whirl": _share(situation.case.machine.rpm_set, whip),
        "wanted_over_whirl": _share(wanted, whip),
    }
    words = {
        **_fixing_words(fixing),
        "moves": "; ".join(words_of(move) for move in weight.moves),
        "whip_from": turns(speed.whips[0] if speed.whips else 0),
        "whip_to": turns(speed.whips[1] if speed.whips else 0, up=True),
        "set": f"{situation.case.machine.rpm_set or 0:.0f} rpm",
        "ceiling": turns(speed.ceiling.value),
        "start": turns(speed.start),
        "why": speed.ceiling.why,
        "wanted": f"{wanted or 0:.0f} rpm",
        "energy": f"{two_figures(speed.energy, True):.0f} J",
    }
    return Fact("speed", known(values), words)


def _fixing_words(fixing: Counterweight | None) -> dict[str, str]:
    """What stands in a sentence about the counterweight."""
    if fixing is None:
        return {}
    return {
        "weight": small_mass(float(about(fixing.grams))),
        "weight_radius": length(fixing.radius),
        "weight_rpm": turns(fixing.rpm, up=True),
        "weight_hold": newtons(fixing.must_hold),
        "bolts": str(fixing.bolts),
    }


def slender(situation: Situation, bar: Slender) -> Fact:
    """How limp the piece is under the tool."""
    values: dict[str, Value | None] = {
        "tool": "carriage" if situation.cut.carriage else "hand",
        "grain": situation.traits.grain,
        "tail": "up" if bar.tail_up else "away",
        "steady": flag(situation.case.hold.steady is not None),
        "ratio": bar.ratio,
        "deflection_mm": bar.deflection,
    }
    bends = bar.deflection or 0.0
    told = f"{bends:.2g} mm" if bends < MOST_TOLD_MM else f"more than {MOST_TOLD_MM:.0f} mm"
    return Fact("slender", known(values), {"deflection": told, "ratio": f"{bar.ratio:.0f}"})


def choice(situation: Situation, verdict: str, best_verdict: str, words: Mapping[str, str]) -> Fact:
    """The hold in use against the best there is."""
    hold = situation.case.hold
    values: dict[str, Value] = {
        "chosen": flag(hold.method is not None or hold.drive is not None),
        "limited": flag(bool(hold.kit or hold.method is not None or hold.drive is not None)),
        "verdict": verdict,
        "best_verdict": best_verdict,
    }
    return Fact("choice", values, dict(words))
