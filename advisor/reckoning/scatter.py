"""What scatters in a job, each input with its stated ends, and the same job with every input at one drawn value.

A drawn value has no ends left: where the reckoning takes the low or the high one it takes this. Two values have no
stated scatter elsewhere: an assumed offset and the friction of the floor are reckoned with at their unfavorable end,
and what lies on the other side of it is stated here.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any, NamedTuple

from advisor.data.tables import load
from advisor.figure import Spread
from advisor.models.wood import WoodProperties
from advisor.physics.relations import FIVE_PERCENT_QUANTILE, LOWEST_SHARE
from advisor.reckoning.holds import jawed, screwed, strengths, stuck
from advisor.reckoning.holds.capacity import Capacity
from advisor.reckoning.holds.margins import MODELS, job_of, letting_go, model_of
from advisor.reckoning.holds.workmanship import SIZES_TABLE, workmanship
from advisor.situation import Situation
from advisor.situation.lathe import FLOOR_FRICTION
from advisor.situation.shape import MEASURED

# Of the offset assumed by shape, which is the worst of ordinary practice; memory.
OFFSET_SHARES = Spread(0.2, 0.6, 1.0)
# An ordinary floor is reckoned with at its low end; memory.
FLOOR = Spread(FLOOR_FRICTION, 0.5, 0.6)
BOND_SHARE = 0.4  # low end of a shop's bond over its mean, where only the order matters; memory
UNNAMED_SHARE = 0.5  # the same for a hold whose table names no part; memory
WOOD_NAMES = {
    "stiffness": ("modulus", "modulus_perpendicular"),
    "tension across the grain": ("tension_perpendicular",),
    "crushing along the grain": ("crushing",),
    "compression across the grain": ("perpendicular", "hardness"),
    "shear strength": ("shear",),
    "bending strength": ("bending",),
}
MATERIAL_NAMES = {"stiffness": "modulus", "compressive strength": "compressive", "tensile strength": "tensile"}
RUB_ON_STEEL = (jawed.outside, jawed.recess, screwed.screw_chuck)
SCREWED = (screwed.faceplate, screwed.screw_chuck)


class Scattered(NamedTuple):
    """One input that scatters: its ends (5 and 95 of 100 pieces) and its typical value."""

    name: str
    ends: Spread
    unit: str
    basis: str


def at(ends: Spread, z: float) -> float:
    """The value z standard deviations from the typical one; each side reaches its stated end at 1.645.

    Never below a quarter of the typical value, or its own low end: what a normal law puts there is not believed.
    Source: derived.
    """
    reach = ends.typical - ends.low if z < 0 else ends.high - ends.typical
    return max(ends.typical + z / FIVE_PERCENT_QUANTILE * reach, min(ends.low, LOWEST_SHARE * ends.typical))


def _unit(name: str) -> str:
    return "GPa" if name == "stiffness" else "MPa"


def _of_stuff(situation: Situation) -> list[Scattered]:
    wood, material = situation.wood, situation.material
    found = [Scattered("density", situation.density, "kg/m³", "scatter of wood" if wood else "range of this material")]
    if wood is not None:
        for name, parts in WOOD_NAMES.items():
            found.append(Scattered(name, getattr(wood, parts[0]), _unit(name), "scatter of clear wood"))
    elif material is not None:
        for name, part in MATERIAL_NAMES.items():
            if part in material.values:
                found.append(Scattered(name, material.values[part].spread, _unit(name), "range of this material"))
    return found


def _of_hold(situation: Situation, method: str) -> list[Scattered]:
    """The parts of the hold's own scatter; empty where no model gives its low and typical capacity."""
    model = MODELS.get(method)
    if model is None:
        return []
    found = []
    for row in load(SIZES_TABLE):
        if row.text("method") == method and row.number("low") < row.number("typical"):
            low, typical = workmanship(method, row.text("name"))
            ends = Spread(low, typical, typical * typical / low)
            unit = row.text("unit") if row.text("unit") != "1" else ""
            found.append(Scattered(f"{row.text('name')} of the hold", ends, unit, "workmanship"))
    if model in RUB_ON_STEEL:
        low, typical = strengths.friction(situation)
        found.append(Scattered("friction in the hold", Spread(low, typical, typical * typical / low), "", "friction"))
    shares = {"withdrawal of the screws": (SCREWED, screwed.LOW_SHARE), "the bond": ((stuck.bond,), BOND_SHARE)}
    for name, (models, share) in shares.items():
        if model in models:
            found.append(Scattered(name, Spread(share, 1.0, 1 / share), "of the mean", "workmanship"))
    if not found:
        ends = Spread(UNNAMED_SHARE, 1.0, 1 / UNNAMED_SHARE)
        found.append(Scattered("workmanship of the hold", ends, "of the mean", "workmanship"))
    return found


def inputs(situation: Situation, method: str) -> tuple[Scattered, ...]:
    """Everything that scatters in this job, held this way. What the person stated or measured does not."""
    found = _of_stuff(situation) + _of_hold(situation, method)
    if situation.body.offset_from not in MEASURED:
        ends = Spread(*(share * situation.body.offset for share in OFFSET_SHARES))
        found.append(Scattered("offset of the mass", ends, "mm", "assumed by shape; memory"))
    if not situation.lathe.bolted:
        found.append(Scattered("friction of the floor", FLOOR, "", "memory"))
    return tuple(found)


def _level(ends: Spread, z: float) -> Spread:
    return Spread(*(at(ends, z),) * 3)


def _wood_at(wood: WoodProperties, z: Mapping[str, float]) -> WoodProperties:
    changed: dict[str, Any] = {
        part: _level(getattr(wood, part), z[name]) for name, parts in WOOD_NAMES.items() for part in parts
    }
    changed |= {part: _level(getattr(wood, part), z["density"]) for part in ("density", "gravity")}
    return wood._replace(**changed)


def drawn(situation: Situation, z: Mapping[str, float]) -> Situation:
    """The same job with every input that scatters at z standard deviations from its typical value, by name."""
    wood, material, body, lathe = situation.wood, situation.material, situation.body, situation.lathe
    density = _level(situation.density, z["density"])
    if wood is not None:
        wood = _wood_at(wood, z)
    if material is not None:
        parts = {part: name for name, part in MATERIAL_NAMES.items() if part in material.values}
        values = {
            part: value._replace(spread=_level(value.spread, z[parts[part]])) if part in parts else value
            for part, value in material.values.items()
        }
        material = material._replace(values=values)
    if not body.mass_given:
        body = body._replace(mass=body.mass * density.low / situation.density.high)
    if "offset of the mass" in z:
        body = body._replace(offset=body.offset * at(OFFSET_SHARES, z["offset of the mass"]))
    if "friction of the floor" in z:
        lathe = lathe._replace(floor_friction=at(FLOOR, z["friction of the floor"]))
    return situation._replace(wood=wood, material=material, density=density, body=body, lathe=lathe)


def _held(part: tuple[float, float], reach: float) -> float:
    """A capacity between its low (reach -1) and its typical end (reach 0), and as far beyond, by equal factors."""
    low, typical = part
    return typical * (low / typical) ** -reach if 0 < low < typical else typical


def lets_go(situation: Situation, method: str, z: Mapping[str, float]) -> float | None:
    """Speed in rpm at which the hold itself, no divisor, lets go of a drawn job: 0 where it does so standing still.

    All parts of the hold at their low ends together give its low capacity, each alone its share of that, in
    proportion to the logarithm of its own ends. None where speed does not matter to this hold. Source: derived.
    """
    rest = job_of(situation, method, 0.0)
    if rest.need.moment <= 0 or method not in MODELS:
        return None
    model = model_of(rest)
    if model.low is None or model.typical is None:
        return None
    parts = _of_hold(situation, method)
    weights = {part.name: math.log(part.ends.typical / part.ends.low) for part in parts}
    reach = sum(weights[name] * z[name] for name in weights) / sum(weights.values()) / FIVE_PERCENT_QUANTILE
    capacity = Capacity(*(_held(part, reach) for part in zip(model.low, model.typical, strict=True)))
    return letting_go(situation, method, model, capacity, 1.0) or 0.0
