"""One species at one moisture: between the dry and the green row, and what it weighs there."""

import math
from collections.abc import Mapping
from functools import lru_cache
from typing import NamedTuple

from advisor.figure import Spread
from advisor.models.wood_cells import (
    DRY_MOISTURE,
    Cell,
    Origin,
    cell,
    dry_moisture,
    elastic_ratios,
    gravity_ends,
    intersection,
    printed_gravity,
    shrinkage,
    variation,
)
from advisor.models.wood_names import Wood
from advisor.physics.relations import DRIEST_MOISTURE, lower_value, moisture_strength, upper_value

GREEN_MOISTURE = 80.0  # percent unless known
GREEN_DENSITY_CAP = 1100.0  # kg/m3, heavier is waterlogged; never below the density of the same wood dry
WETTEST = 400.0  # percent
DRY_WORDS = ("dry", "air-dry")
GREEN_WORDS = ("wet", "green", "frozen")
DRY_LOSS_BELOW = 8.0  # percent; tension across the grain loses a tenth below it
DRY_LOSS = 0.9

# Constants of the split model, and of every wood without elastic ratios, GPa; beech alone has 0.77 and 1.86
# (j-wood-sci-2019), the ends are from memory.
SPLIT_MODULUS_PERPENDICULAR = Spread(0.3, 0.8, 1.9)
SPLIT_MODULUS_ALONG = 12.0

STRENGTHS = ("crushing", "perpendicular", "shear", "bending", "modulus", "hardness")
FILLED_KINDS = ("kin", "fit")


class WoodProperties(NamedTuple):
    """What holds and turns a wood at one moisture.

    gravity: oven-dry mass over volume at 12 %; density at the moisture, kg/m3; density12, kg/m3, the largest mean at
    12 %; crushing (along the grain), perpendicular (proportional limit across it), shear, tension_perpendicular and
    bending in MPa; modulus and modulus_perpendicular in GPa; fracture_energy in J/m2; shrinkage green to oven-dry in
    percent; hardness (side) in N. `filled` names the properties that no cell of the table gave.
    """

    name: str
    group: str
    gravity: Spread
    density: Spread
    density12: float
    moisture_percent: float
    green: bool
    crushing: Spread
    perpendicular: Spread
    shear: Spread
    tension_perpendicular: Spread
    bending: Spread
    modulus: Spread
    modulus_perpendicular: Spread
    fracture_energy: float
    shrinkage_radial: float
    shrinkage_tangential: float
    hardness: Spread
    origins: Mapping[str, Origin]
    filled: tuple[str, ...]


class Moisture(NamedTuple):
    """A moisture as one species reads it; `row` is the printed row that answers alone, else empty."""

    percent: float
    row: str
    dry: float
    intersection: float


class Weight(NamedTuple):
    """Specific gravity at 12 %, density at the moisture, largest mean density at 12 %, fracture energy."""

    gravity: Spread
    density: Spread
    density12: float
    fracture_energy: float


def accepted_moisture(moisture: float | str) -> float | str:
    """The moisture itself. Raises ValueError for a word that is none and a percentage below 0 or above 400."""
    if isinstance(moisture, str):
        if moisture in DRY_WORDS + GREEN_WORDS:
            return moisture
    elif math.isfinite(moisture) and 0 <= moisture <= WETTEST:
        return float(moisture)
    words = ", ".join(DRY_WORDS + GREEN_WORDS)
    raise ValueError(f"moisture {moisture!r}: expected percent from 0 to {WETTEST:g}, or one of {words}")


def read_moisture(step: float | str, dry: float, crossing: float) -> Moisture:
    """A moisture against the dry row's own moisture and the one from which wood counts as green."""
    if isinstance(step, str):
        return (
            Moisture(dry, "dry", dry, crossing)
            if step in DRY_WORDS
            else Moisture(GREEN_MOISTURE, "green", dry, crossing)
        )
    return Moisture(step, "green" if step >= crossing else "dry" if step == dry else "", dry, crossing)


@lru_cache(maxsize=2048)
def of_species(wood: Wood, step: float | str) -> WoodProperties:
    """Properties of one species at a moisture in percent or in words."""
    species = wood.species_id
    at = read_moisture(step, dry_moisture(species), intersection(species))
    cells = {name: along(cell(species, "dry", name), cell(species, "green", name), at) for name in STRENGTHS}
    cells["tension_perpendicular"] = across(
        cell(species, "dry", "tension_perpendicular"), cell(species, "green", "tension_perpendicular"), at
    )
    cells["modulus_perpendicular"] = _modulus_perpendicular(species, cells["modulus"].spread)
    radial, radial_origin = shrinkage(species, "shrinkage_radial")
    tangential, tangential_origin = shrinkage(species, "shrinkage_tangential")
    weight = weigh(gravity_ends(species, at.percent), gravity_ends(species, DRY_MOISTURE), at.percent)
    origins = {name: found.origin for name, found in cells.items()} | {
        "gravity": _gravity_origin(species),
        "shrinkage_radial": radial_origin,
        "shrinkage_tangential": tangential_origin,
    }
    return WoodProperties(
        name=wood.label,
        group=wood.group,
        gravity=weight.gravity,
        density=weight.density,
        density12=weight.density12,
        moisture_percent=at.percent,
        green=at.row == "green",
        fracture_energy=weight.fracture_energy,
        crushing=cells["crushing"].spread,
        perpendicular=cells["perpendicular"].spread,
        shear=cells["shear"].spread,
        tension_perpendicular=cells["tension_perpendicular"].spread,
        bending=cells["bending"].spread,
        modulus=cells["modulus"].spread,
        modulus_perpendicular=cells["modulus_perpendicular"].spread,
        shrinkage_radial=radial,
        shrinkage_tangential=tangential,
        hardness=cells["hardness"].spread,
        origins=origins,
        filled=tuple(name for name, origin in origins.items() if origin.kind in FILLED_KINDS),
    )


def weigh(ends: tuple[float, float], ends12: tuple[float, float], moisture: float) -> Weight:
    """Weights from the lowest and highest mean specific gravity at the moisture and at 12 %.

    Formula  density = 1000 * G_M * (1 + M / 100), above 12 % at most 1100 or the density at 12 %
    Formula  fracture energy = 1.07 * density at 12 % - 162, held between 100 and 500 J/m2
    """
    scatter = variation("gravity")
    gravity = Spread(lower_value(mean=ends12[0], variation=scatter), ends12[0], upper_value(ends12[1], scatter))
    dry_weight = 1000 * (1 + DRY_MOISTURE / 100)
    heaviest = 1000 * (1 + moisture / 100)
    density = Spread(
        lower_value(mean=ends[0], variation=scatter) * heaviest,
        ends[1] * heaviest,
        upper_value(ends[1], scatter) * heaviest,
    )
    if moisture > DRY_MOISTURE:
        dry = (gravity.low * dry_weight, ends12[1] * dry_weight, gravity.high * dry_weight)
        density = Spread(*(min(wet, max(GREEN_DENSITY_CAP, own)) for wet, own in zip(density, dry, strict=True)))
    energy = min(500.0, max(100.0, 1.07 * ends12[0] * dry_weight - 162))
    return Weight(gravity, density, ends12[1] * dry_weight, energy)


def along(dry: Cell, green: Cell, at: Moisture) -> Cell:
    """Between the two rows by the moisture relation.

    Drier is never weaker: the filled one of two rows gives way to the printed one, else the green row to the dry. A
    printed row and a filled one together prove no gain below the dry row.
    """
    if dry.origin.kind in FILLED_KINDS and green.origin.kind == "table":
        dry = Cell(Spread(*map(max, dry.spread, green.spread)), dry.origin)
    else:
        green = Cell(Spread(*map(min, dry.spread, green.spread)), green.origin)
    one_filled = (dry.origin.kind in FILLED_KINDS) != (green.origin.kind in FILLED_KINDS)
    if at.row == "dry" or (one_filled and not at.row and at.percent < at.dry):
        return dry
    if at.row == "green":
        return green
    return Cell(
        Spread(*(_by_moisture(d, g, at) for d, g in zip(dry.spread, green.spread, strict=True))),
        _joined(dry.origin, green.origin, f"moisture relation at {at.percent:g} %"),
    )


def _by_moisture(dry: float, green: float, at: Moisture) -> float:
    # A dry row at 15 % is carried to 12 % first, along the same line of logarithms. The relation is one of ratios, so
    # it serves modulus and hardness, which are no MPa, as well.
    ratio12 = (dry / green) ** ((at.intersection - DRY_MOISTURE) / (at.intersection - at.dry))
    return green * moisture_strength(
        dry=ratio12, green=1.0, moisture=max(at.percent, DRIEST_MOISTURE), intersection=at.intersection
    )


def across(dry: Cell, green: Cell, at: Moisture) -> Cell:
    """Tension across the grain is greatest near 12 %: flat in dry wood, a tenth less below 8 %.

    Between the dry row and green wood the straight line between the two rows counts where it is the lower.
    """
    if at.row:
        return dry if at.row == "dry" else green
    if at.percent < at.dry:
        loss = DRY_LOSS if at.percent < DRY_LOSS_BELOW else 1.0
        return Cell(Spread(*(value * loss for value in dry.spread)), dry.origin)
    share = (at.percent - at.dry) / (at.intersection - at.dry)
    between = (min(d, d + share * (g - d)) for d, g in zip(dry.spread, green.spread, strict=True))
    how = f"the lower of the dry row and the line at {at.percent:g} %"
    return Cell(Spread(*between), _joined(dry.origin, green.origin, how))


def _joined(dry: Origin, green: Origin, how: str) -> Origin:
    chief = green if FILLED_KINDS.count(green.kind) > FILLED_KINDS.count(dry.kind) else dry
    return Origin(chief.kind, chief.source, f"{dry.text}; {green.text}; {how}")


def _modulus_perpendicular(species_id: str, along: Spread) -> Cell:
    ratios = elastic_ratios(species_id)
    if ratios is None:
        text = "constant of the splitting model, for every wood without elastic ratios"
        return Cell(SPLIT_MODULUS_PERPENDICULAR, Origin("constant", "split-model", text))
    middle = sum(ratios) / 2
    text = "elastic ratios near 12 %, tangential and radial, times the modulus"
    return Cell(
        Spread(min(ratios) * along.low, middle * along.typical, max(ratios) * along.high),
        Origin("table", "wood-handbook-5-1", text),
    )


def _gravity_origin(species_id: str) -> Origin:
    if printed_gravity(species_id, "dry"):
        return Origin("table", "wood-handbook-5-3", "specific gravity of the dry row")
    return Origin("fit", "wood-handbook-4", "dry row has no specific gravity; worked from the green one")
