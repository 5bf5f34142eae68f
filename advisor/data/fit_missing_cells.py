"""Refit the power laws that fill the cells the wood tables lack.

    value = factor * gravity ** exponent

by least squares in the logarithms over the North American species of one group and one row (dry or green), each
value against the specific gravity printed in its own row; shrinkage against the green gravity. `scatter` is the
standard deviation of the residuals of the natural logarithms with n - 2 degrees of freedom, so that
value * exp(-1.645 * scatter) is the lower 5 % value. Strengths in MPa, modulus in GPa, hardness in N, shrinkage
in percent.

    python -m advisor.data.fit_missing_cells > advisor/data/wood_fits.csv
"""

import csv
import math
import sys
from collections.abc import Iterator, Sequence
from typing import NamedTuple, TextIO

from advisor.data import wood_tables
from advisor.data.tables import Row, load
from advisor.data.wood_tables import SHRINKAGE_COLUMNS, STRENGTH_COLUMNS


class Fit(NamedTuple):
    """A power law through the rows of one group and moisture, and the range of gravity it rests on."""

    property: str
    group: str
    row: str
    factor: float
    exponent: float
    scatter: float
    rows: int
    gravity_low: float
    gravity_high: float


def fits() -> Iterator[Fit]:
    """All fits, freshly worked out from the tables of this folder."""
    domestic = {row.text("species_id"): row.text("group") for row in load(wood_tables.SPECIES)
                if row.text("origin") == "North America"}
    strength = [row for row in load(wood_tables.STRENGTH) if row.text("species_id") in domestic]
    for name, (column, factor) in STRENGTH_COLUMNS.items():
        for group in ("hardwood", "softwood"):
            for moisture in ("dry", "green"):
                rows = [row for row in strength
                        if row.text("row") == moisture and domestic[row.text("species_id")] == group]
                yield _fit(name, group, moisture, _points(rows, column, factor))
    shrinkage = {row.text("species_id"): row for row in load(wood_tables.SHRINKAGE)}
    for name, column in SHRINKAGE_COLUMNS.items():
        for group in ("hardwood", "softwood"):
            points = [(row.number("specific_gravity"), shrinkage[row.text("species_id")].number(column))
                      for row in strength if row.text("row") == "green" and row.text("species_id") in shrinkage
                      and domestic[row.text("species_id")] == group]
            yield _fit(name, group, "green", points)


def _points(rows: Sequence[Row], column: str, factor: float) -> list[tuple[float, float]]:
    pairs = ((row.optional("specific_gravity"), row.optional(column)) for row in rows)
    return [(gravity, value * factor) for gravity, value in pairs if gravity is not None and value is not None]


def _fit(name: str, group: str, row: str, points: Sequence[tuple[float, float]]) -> Fit:
    logs = [(math.log(gravity), math.log(value)) for gravity, value in points]
    count = len(logs)
    mean_x = sum(x for x, _ in logs) / count
    mean_y = sum(y for _, y in logs) / count
    exponent = sum((x - mean_x) * (y - mean_y) for x, y in logs) / sum((x - mean_x) ** 2 for x, _ in logs)
    residuals = sum((y - mean_y - exponent * (x - mean_x)) ** 2 for x, y in logs)
    gravities = [gravity for gravity, _ in points]
    return Fit(name, group, row, math.exp(mean_y - exponent * mean_x), exponent, math.sqrt(residuals / (count - 2)),
               count, min(gravities), max(gravities))


def write(out: TextIO) -> None:
    """Write the fits as the table `wood_fits.csv`."""
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow([column.name for column in wood_tables.FITS.columns])
    for fit in fits():
        table = "FPL-GTR-190 (2010) Table 4-3" if fit.property in SHRINKAGE_COLUMNS else "FPL-GTR-282 (2021) Table 5-3b"
        writer.writerow([fit.property, fit.group, fit.row, f"{fit.factor:.5g}", f"{fit.exponent:.4f}",
                         f"{fit.scatter:.4f}", fit.rows, fit.gravity_low, fit.gravity_high, f"fitted to {table}"])


if __name__ == "__main__":
    write(sys.stdout)
