"""The power laws that fill missing cells: refitted, against a library, against an earlier fit."""

import io
import math
import statistics

import pytest

from advisor.data import fit_missing_cells, tables, wood_tables
from advisor.data.fit_missing_cells import Fit

FRESH = {(fit.property, fit.group, fit.row): fit for fit in fit_missing_cells.fits()}


def test_the_committed_fits_are_the_fresh_ones() -> None:
    out = io.StringIO()
    fit_missing_cells.write(out)
    assert out.getvalue() == (tables.FOLDER / wood_tables.FITS.file).read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("column", "name"), [("perpendicular_psi", "perpendicular"), ("side_hardness_lbf", "hardness")])
def test_a_fit_agrees_with_a_reference_library(column: str, name: str) -> None:
    domestic = {row.text("species_id") for row in tables.load(wood_tables.SPECIES)
                if row.text("origin") == "North America" and row.text("group") == "softwood"}
    pairs = [(row.optional("specific_gravity"), row.optional(column)) for row in tables.load(wood_tables.STRENGTH)
             if row.text("species_id") in domestic and row.text("row") == "dry"]
    points = [(math.log(x), math.log(y)) for x, y in pairs if x is not None and y is not None]
    across, up = [x for x, _ in points], [y for _, y in points]
    line = statistics.linear_regression(across, up)
    fit = FRESH[name, "softwood", "dry"]
    assert fit.exponent == pytest.approx(line.slope, rel=1e-9)
    factor = 4.4482216152605 if name == "hardness" else 0.006894757293168
    assert fit.factor == pytest.approx(math.exp(line.intercept) * factor, rel=1e-9)
    unexplained = statistics.variance(up) * (len(points) - 1) * (1 - statistics.correlation(across, up) ** 2)
    assert fit.scatter == pytest.approx(math.sqrt(unexplained / (len(points) - 2)), rel=1e-6)
    assert fit.rows == len(points)


# The laws as worked out beforehand and apart from this script; scatter rounded to two figures.
@pytest.mark.parametrize(("key", "factor", "exponent", "scatter"), [
    (("perpendicular", "hardwood", "dry"), 21.6, 2.09, 0.20),
    (("perpendicular", "softwood", "dry"), 16.5, 1.57, 0.12),
    (("perpendicular", "hardwood", "green"), 18.5, 2.48, 0.17),
    (("perpendicular", "softwood", "green"), 8.8, 1.53, 0.18),
    (("tension_perpendicular", "hardwood", "dry"), 10.1, 1.30, 0.18),
    (("tension_perpendicular", "softwood", "dry"), 6.0, 1.11, 0.18),
    (("tension_perpendicular", "hardwood", "green"), 10.5, 1.37, 0.18),
    (("tension_perpendicular", "softwood", "green"), 3.8, 0.78, 0.22),
])
def test_the_fits_agree_with_an_earlier_fit(
    key: tuple[str, str, str], factor: float, exponent: float, scatter: float
) -> None:
    fit = FRESH[key]
    assert fit.factor == pytest.approx(factor, abs=0.05)
    assert fit.exponent == pytest.approx(exponent, abs=0.0051)
    assert fit.scatter == pytest.approx(scatter, abs=0.0056)


def value(fit: Fit, gravity: float) -> float:
    return fit.factor * math.pow(gravity, fit.exponent)


@pytest.mark.parametrize("key", list(FRESH))
def test_a_fit_passes_through_its_rows_about_evenly(key: tuple[str, str, str]) -> None:
    fit = FRESH[key]
    assert 0.05 < fit.scatter < 0.25
    assert fit.rows >= 35
    assert value(fit, fit.gravity_low) < value(fit, fit.gravity_high)
