"""Wood Handbook, table of functions relating mechanical properties to specific gravity (FPL-GTR-190 Table 5-11a).

The printed coefficients are quoted from memory. They were fitted by the handbook's authors to the same species, so
our fits (`wood_fits.csv`) to the copied cells must give nearly the same strengths: a slip of a digit in the copy would
show.
"""

import pytest

from advisor.data import tables, wood_tables

SOURCES = ("wood-handbook-5-3", "wood-fits")
FITS = {(row.text("property"), row.text("group"), row.text("row")): row for row in tables.load(wood_tables.FITS)}

# property, group, row, factor in MPa, GPa or N, exponent
PRINTED = [
    ("bending", "softwood", "green", 109.6, 1.01), ("bending", "softwood", "dry", 170.7, 1.01),
    ("bending", "hardwood", "green", 118.7, 1.16), ("bending", "hardwood", "dry", 171.3, 1.13),
    ("modulus", "softwood", "green", 16.1, 0.76), ("modulus", "softwood", "dry", 20.5, 0.84),
    ("modulus", "hardwood", "green", 13.9, 0.72), ("modulus", "hardwood", "dry", 16.5, 0.7),
    ("crushing", "softwood", "green", 49.7, 0.94), ("crushing", "softwood", "dry", 93.7, 0.97),
    ("crushing", "hardwood", "green", 49.0, 1.11), ("crushing", "hardwood", "dry", 76.0, 0.89),
    ("perpendicular", "softwood", "green", 8.8, 1.53), ("perpendicular", "softwood", "dry", 16.5, 1.57),
    ("perpendicular", "hardwood", "green", 18.5, 2.48), ("perpendicular", "hardwood", "dry", 21.6, 2.09),
    ("shear", "softwood", "green", 11.0, 0.73), ("shear", "softwood", "dry", 16.6, 0.85),
    ("shear", "hardwood", "green", 17.8, 1.24), ("shear", "hardwood", "dry", 21.9, 1.13),
    ("tension_perpendicular", "softwood", "green", 3.8, 0.78), ("tension_perpendicular", "softwood", "dry", 6.0, 1.11),
    ("tension_perpendicular", "hardwood", "green", 10.5, 1.37), ("tension_perpendicular", "hardwood", "dry", 10.1, 1.3),
    ("hardness", "softwood", "green", 6230, 1.41), ("hardness", "softwood", "dry", 8590, 1.49),
    ("hardness", "hardwood", "green", 16550, 2.31), ("hardness", "hardwood", "dry", 15300, 2.09),
]


@pytest.mark.parametrize(("name", "group", "row", "factor", "exponent"), PRINTED)
@pytest.mark.parametrize("gravity", [0.35, 0.5, 0.65])
def test_our_fit_gives_the_printed_strength(
    name: str, group: str, row: str, factor: float, exponent: float, gravity: float
) -> None:
    fit = FITS[name, group, row]
    ours = fit.number("factor") * gravity ** fit.number("exponent")
    assert ours == pytest.approx(factor * gravity**exponent, rel=0.03)
