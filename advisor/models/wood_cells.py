"""What the tables say of one species in one row, dry or green, with missing cells filled and the scatter put on.

Order for every cell: the printed value; the published value of the nearest relative (tension across the grain only);
a power law of gravity fitted to the North American species. Printed values get the scatter of clear wood,
mean * max(0.25, 1 - 1.645 V) below and mean * (1 + 1.645 V) above. A fitted value is taken at its lower 5 % already:
it stands for the low end and for the mean, without a further factor.
"""

import math
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Literal, NamedTuple

from advisor.data import wood_tables
from advisor.data.tables import Row, Table, load
from advisor.data.wood_tables import SHRINKAGE_COLUMNS, STRENGTH_COLUMNS
from advisor.figure import Spread
from advisor.models.wood_names import woods
from advisor.physics.relations import FIVE_PERCENT_QUANTILE, lower_value, upper_value

DRY_MOISTURE = 12.0  # percent, of the dry row where it prints no other
FIBER_SATURATION = 30.0  # percent, where swelling ends
VOLUME_CHANGE = 0.265  # swelling per unit of green gravity, Wood Handbook, from memory

RowName = Literal["dry", "green"]


class Origin(NamedTuple):
    """Where a property is from. kind: table, kin (nearest relative), fit, worst (of several woods), constant."""

    kind: str
    source: str
    text: str


class Cell(NamedTuple):
    """A property of one species in one row: 5 % value, mean, upper value, and where it is from."""

    spread: Spread
    origin: Origin


@cache
def _by_key(table: Table) -> Mapping[tuple[str, ...], Row]:
    return {tuple(row.text(name) for name in table.key): row for row in load(table)}


def _by_family(table: Table, species_id: str) -> Row | None:
    """The row of a species or, where the table prints a whole family (`oak-red`), that of its family."""
    rows = _by_key(table)
    parts = species_id.split("-")
    return next((row for count in range(len(parts), 0, -1) if (row := rows.get(("-".join(parts[:count]),)))), None)


def variation(name: str) -> float:
    """Coefficient of variation of a property of clear wood, as a fraction. Wood Handbook table 5-6."""
    return _by_key(wood_tables.VARIATION)[name,].number("variation_pct") / 100


def intersection(species_id: str) -> float:
    """Moisture at which drying begins to strengthen the wood, percent; 25 where the table has no row."""
    row = _by_family(wood_tables.INTERSECTION, species_id) or _by_key(wood_tables.INTERSECTION)["default",]
    return row.number("intersection_pct")


def dry_moisture(species_id: str) -> float:
    """Moisture of the dry row, percent, as printed in that row."""
    return _by_key(wood_tables.STRENGTH)[species_id, "dry"].optional("moisture_pct") or DRY_MOISTURE


def printed(species_id: str, row: RowName, name: str) -> tuple[float, ...]:
    """Every printed mean of a cell in MPa, GPa or N: none, one, or two where the printings differ."""
    column, factor = STRENGTH_COLUMNS[name]
    value = _by_key(wood_tables.STRENGTH)[species_id, row].optional(column)
    conflict = _by_key(wood_tables.CONFLICTS).get((species_id, row, name))
    other = conflict.optional("metric_printed") if conflict else None
    return (*(() if value is None else (value * factor,)), *(() if other is None else (other,)))


def printed_gravity(species_id: str, row: RowName) -> tuple[float, ...]:
    """Every printed specific gravity of a row: oven-dry mass over the volume at the moisture of that row."""
    value = _by_key(wood_tables.STRENGTH)[species_id, row].optional("specific_gravity")
    conflict = _by_key(wood_tables.CONFLICTS).get((species_id, row, "gravity"))
    other = conflict.optional("metric_printed") if conflict else None
    return (*(() if value is None else (value,)), *(() if other is None else (other,)))


def carried_gravity(green: float, dry: float | None, moisture: float) -> float:
    """Specific gravity over the volume at a moisture in percent.

    Formula  G = G_green / (1 - k * (1 - M / 30)), constant from 30 % upward
    k is 0.265 * G_green, or what the printed gravity at 12 % makes it where there is one.
    """
    share = max(0.0, 1 - moisture / FIBER_SATURATION)
    share12 = 1 - DRY_MOISTURE / FIBER_SATURATION
    swelling = VOLUME_CHANGE * green if dry is None else max(0.0, (1 - green / dry) / share12)
    return green / (1 - swelling * share)


def gravity_ends(species_id: str, moisture: float) -> tuple[float, float]:
    """Lowest and highest printing of the specific gravity, carried to a moisture in percent."""
    green, dry = printed_gravity(species_id, "green"), printed_gravity(species_id, "dry")
    return (
        carried_gravity(min(green), min(dry, default=None), moisture),
        carried_gravity(max(green), max(dry, default=None), moisture),
    )


@cache
def cell(species_id: str, row: RowName, name: str) -> Cell:
    """A strength, the modulus or the hardness of one species in one row: printed, a relative's, or fitted."""
    values = printed(species_id, row, name)
    if values:
        source = _by_key(wood_tables.STRENGTH)[species_id, row].text("source")
        doubt = ", two printings differ" if len(values) > 1 else ""
        return Cell(scattered(values, name), Origin("table", "wood-handbook-5-3", f"{source}, {row} row{doubt}"))
    kin = _by_key(wood_tables.TENSION_SUPPLEMENT).get((species_id, row)) if name == "tension_perpendicular" else None
    if kin:
        text = f"{row} value of the nearest relative, {kin.text('relative')} ({kin.text('source')})"
        return Cell(
            scattered((kin.number("tension_perpendicular_MPa"),), name), Origin("kin", "wood-handbook-5-3", text)
        )
    return _fitted(species_id, row, name)


def scattered(values: Sequence[float], name: str) -> Spread:
    """Printed means of one property with the scatter of clear wood: the lowest reduced, the highest raised."""
    low, scatter = min(values), variation(name)
    return Spread(lower_value(mean=low, variation=scatter), low, upper_value(max(values), scatter))


def _fit_rows(species_id: str, row: RowName, name: str) -> list[Row]:
    """The fits that speak for a species. Imported softwoods have no fit of their own: both groups are asked."""
    wood = woods()[species_id]
    imported_softwood = wood.group == "softwood" and wood.origin != "North America"
    groups = ("hardwood", "softwood") if imported_softwood else (wood.group,)
    return [_by_key(wood_tables.FITS)[name, group, row] for group in groups]


def _fitted(species_id: str, row: RowName, name: str) -> Cell:
    moisture = dry_moisture(species_id) if row == "dry" else FIBER_SATURATION
    gravity = gravity_ends(species_id, moisture)[0]
    lows, highs = [], []
    for fit in _fit_rows(species_id, row, name):
        middle = fit.number("factor") * gravity ** fit.number("exponent")
        reach = math.exp(FIVE_PERCENT_QUANTILE * fit.number("scatter"))
        lows.append(middle / reach)
        highs.append(middle * reach)
    text = f"{row} row has no cell; power law of gravity {gravity:.2f} fitted to the table, lower 5 %"
    return Cell(Spread(min(lows), min(lows), max(highs)), Origin("fit", "wood-fits", text))


@cache
def shrinkage(species_id: str, name: str) -> tuple[float, Origin]:
    """Shrinkage from green to oven-dry in percent, radial or tangential; fitted at its upper 5 % where not printed."""
    row = _by_key(wood_tables.SHRINKAGE).get((species_id,))
    value = row.optional(SHRINKAGE_COLUMNS[name]) if row else None
    if row and value is not None:
        return value, Origin("table", "wood-handbook-4-3", row.text("source"))
    gravity = gravity_ends(species_id, FIBER_SATURATION)[1]
    upper = max(
        fit.number("factor")
        * gravity ** fit.number("exponent")
        * math.exp(FIVE_PERCENT_QUANTILE * fit.number("scatter"))
        for fit in _fit_rows(species_id, "green", name)
    )
    text = f"no cell; power law of gravity {gravity:.2f} fitted to the table, upper 5 %"
    return upper, Origin("fit", "wood-fits", text)


def elastic_ratios(species_id: str) -> tuple[float, float] | None:
    """Modulus tangential and radial over modulus along the grain, near 12 %; None where the table prints none."""
    row = _by_family(wood_tables.ELASTIC_RATIOS, species_id)
    tangential, radial = (row.optional("ET_over_EL"), row.optional("ER_over_EL")) if row else (None, None)
    return None if tangential is None or radial is None else (tangential, radial)
