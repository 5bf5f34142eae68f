"""The worst of several woods, property by property, and of the whole table for a wood nobody knows."""

from collections.abc import Callable, Sequence
from functools import cache

from advisor.data import wood_tables
from advisor.data.tables import load
from advisor.data.wood_tables import SHRINKAGE_COLUMNS
from advisor.figure import Spread
from advisor.models.wood_cells import (
    DRY_MOISTURE,
    FIBER_SATURATION,
    VOLUME_CHANGE,
    Cell,
    Origin,
    RowName,
    carried_gravity,
    gravity_ends,
    printed,
    scattered,
    shrinkage,
)
from advisor.models.wood_moisture import (
    SPLIT_MODULUS_PERPENDICULAR,
    STRENGTHS,
    WoodProperties,
    across,
    along,
    read_moisture,
    weigh,
)
from advisor.models.wood_names import woods

UNKNOWN_INTERSECTION = 25.0  # percent
LOWEST = Origin("worst", "wood-handbook-5-3", "wood not known: the lowest printed value of the whole table")
LIGHTEST = Origin("worst", "wood-handbook-5-3", "wood not known: the lightest and the heaviest of the whole table")
MEASURED = Origin("worst", "wood-handbook-5-3", "wood not known: the gravity measured")
EDGE = Origin("worst", "wood-handbook-5-3", "wood not known: lower edge of the table, no further 5 % factor")


def worst(name: str, found: Sequence[WoodProperties]) -> WoodProperties:
    """The adverse end of every property over several woods or moistures: lows, means and highs each at their worst."""

    def weak(pick: Callable[[WoodProperties], Spread]) -> Spread:
        spreads = [pick(one) for one in found]
        return Spread(min(s.low for s in spreads), min(s.typical for s in spreads), max(s.high for s in spreads))

    density = weak(lambda one: one.density)
    heaviest = max(one.density.typical for one in found)
    origins, filled = _origins(found)
    wettest = max(found, key=lambda one: one.moisture_percent)
    return WoodProperties(
        name=name,
        group=_group(found),
        gravity=weak(lambda one: one.gravity),
        density=density._replace(typical=heaviest),
        density12=max(one.density12 for one in found),
        moisture_percent=wettest.moisture_percent,
        green=any(one.green for one in found),
        crushing=weak(lambda one: one.crushing),
        perpendicular=weak(lambda one: one.perpendicular),
        shear=weak(lambda one: one.shear),
        tension_perpendicular=weak(lambda one: one.tension_perpendicular),
        bending=weak(lambda one: one.bending),
        modulus=weak(lambda one: one.modulus),
        modulus_perpendicular=weak(lambda one: one.modulus_perpendicular),
        fracture_energy=min(one.fracture_energy for one in found),
        shrinkage_radial=max(one.shrinkage_radial for one in found),
        shrinkage_tangential=max(one.shrinkage_tangential for one in found),
        hardness=weak(lambda one: one.hardness),
        origins=origins,
        filled=filled,
    )


def _group(found: Sequence[WoodProperties]) -> str:
    """Of a mixed lot hardwood: its screws have the lower side-load constants at the same gravity."""
    return "softwood" if all(one.group == "softwood" for one in found) else "hardwood"


def _badness(one: WoodProperties, name: str) -> float:
    value: Spread | float = getattr(one, name)
    return value.low if isinstance(value, Spread) else -value


def _origins(found: Sequence[WoodProperties]) -> tuple[dict[str, Origin], tuple[str, ...]]:
    origins: dict[str, Origin] = {}
    filled = []
    for name in found[0].origins:
        badness = [_badness(one, name) for one in found]
        governing = found[badness.index(min(badness))]
        own = governing.origins[name]
        origins[name] = Origin("worst", own.source, f"{governing.name}, the worst of {len(found)}: {own.text}")
        if name in governing.filled:
            filled.append(name)
    return origins, tuple(filled)


def of_unknown(name: str, step: float | str, gravity: float | None = None) -> WoodProperties:
    """The whole table's worst printed values, and the greatest density.

    Tension across the grain is the lowest printed mean without a further 5 % factor. With a measured gravity (at
    12 %) density follows from it, and that strength is the lower edge of the table for it: coefficient * gravity of
    the weaker group.
    """
    at = read_moisture(step, DRY_MOISTURE, UNKNOWN_INTERSECTION)
    # the strength gained below 12 % is that of a wood, and which one is not known
    damper = at if at.row or at.percent > DRY_MOISTURE else at._replace(row="dry")
    cells = {one: along(_lowest("dry", one), _lowest("green", one), damper) for one in STRENGTHS}
    tension = across(_lowest_tension("dry", gravity), _lowest_tension("green", gravity), at)
    weight = weigh(_gravities(at.percent, gravity), _gravities(DRY_MOISTURE, gravity), at.percent)
    shrinkages = {one: max(shrinkage(species, one)[0] for species in woods()) for one in SHRINKAGE_COLUMNS}
    origins = {one: found.origin for one, found in cells.items()} | {
        "tension_perpendicular": tension.origin,
        "gravity": LIGHTEST if gravity is None else MEASURED,
        "modulus_perpendicular": Origin("constant", "split-model", "constant of the splitting model"),
    }
    origins |= {one: Origin("worst", "wood-handbook-4-3", "largest of the whole table") for one in shrinkages}
    return WoodProperties(
        name=name,
        group="hardwood",
        gravity=weight.gravity,
        density=weight.density,
        density12=weight.density12,
        moisture_percent=at.percent,
        green=at.row == "green",
        crushing=cells["crushing"].spread,
        perpendicular=cells["perpendicular"].spread,
        shear=cells["shear"].spread,
        tension_perpendicular=tension.spread,
        bending=cells["bending"].spread,
        modulus=cells["modulus"].spread,
        modulus_perpendicular=SPLIT_MODULUS_PERPENDICULAR,
        fracture_energy=weight.fracture_energy,
        shrinkage_radial=shrinkages["shrinkage_radial"],
        shrinkage_tangential=shrinkages["shrinkage_tangential"],
        hardness=cells["hardness"].spread,
        origins=origins,
        filled=(),
    )


@cache
def _lowest(row: RowName, name: str) -> Cell:
    return Cell(scattered([mean for species in woods() for mean in printed(species, row, name)], name), LOWEST)


def _lowest_tension(row: RowName, gravity: float | None) -> Cell:
    lowest = _lowest(row, "tension_perpendicular").spread
    if gravity is None:
        return Cell(lowest._replace(low=lowest.typical), EDGE)
    basic = gravity if row == "dry" else _basic(gravity)
    edge = (
        min(
            line.number("tension_perpendicular_over_gravity_MPa")
            for line in load(wood_tables.UNKNOWN)
            if line.text("row") == row
        )
        * basic
    )
    return Cell(Spread(edge, edge, max(edge, lowest.high)), EDGE)


def _basic(gravity: float) -> float:
    """Green specific gravity from that at 12 %: the relation of `swelling`, turned round."""
    return gravity / (1 + VOLUME_CHANGE * gravity * (1 - DRY_MOISTURE / FIBER_SATURATION))


@cache
def _gravities(moisture: float, gravity: float | None) -> tuple[float, float]:
    if gravity is not None:
        basic = _basic(gravity)
        carried = carried_gravity(basic, None, moisture)
        return carried, carried
    ends = [gravity_ends(species, moisture) for species in woods()]
    return min(low for low, _ in ends), max(high for _, high in ends)
