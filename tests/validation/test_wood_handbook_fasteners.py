"""Screws: Wood Handbook, chapter 8 and its Table 8-4, and the National Design Specification for Wood Construction.

Compared: `screw-withdrawal`, `screw_lateral`.
"""

from __future__ import annotations

from itertools import pairwise

import pytest

from advisor.data import wood_tables
from advisor.data.tables import load
from advisor.physics import screws

SOURCES = ("wood-handbook-8", "wood-handbook-8-4", "nds")
INCH = 25.4
POUND = 4.4482216
# Lag screws, NDS table of withdrawal design values: gravity, diameter in, lb per inch of thread (1800·G^1.5·D^0.75).
LAG_TABLE = [(0.50, 1 / 2, 378), (0.67, 1 / 4, 349), (0.43, 3 / 8, 243)]
LAG_ULTIMATE = 8100 / 1800


@pytest.mark.parametrize(("gravity", "diameter", "design"), LAG_TABLE)
def test_lag_screws(gravity: float, diameter: float, design: float) -> None:
    found = screws.screw_withdrawal(gravity=gravity, diameter=diameter * INCH, thread=INCH, kind="lag", fiber="side")
    assert found / POUND == pytest.approx(design * LAG_ULTIMATE, rel=4e-3)


def test_printed_wood_screw_design_value() -> None:
    """NDS example: gravity 0.45, diameter 0.190 in, 109 lb per inch of thread; ultimate is 5.5 times that."""
    found = screws.screw_withdrawal(gravity=0.45, diameter=0.190 * INCH, thread=INCH, kind="wood", fiber="side")
    assert found / POUND / screws.ALLOWABLE_DIVISOR == pytest.approx(109, abs=1)


def test_constants_are_the_inch_pound_ones_converted() -> None:
    """15 700·G²·D·L and 8100·G^1.5·D^0.75·L, pounds and inches."""
    assert pytest.approx(15700 * POUND / INCH**2, rel=1e-4) == screws.WOOD_SCREW
    assert pytest.approx(8100 * POUND / INCH**1.75, rel=1e-3) == screws.LAG_SCREW
    assert pytest.approx(15700 / 2850, abs=0.01) == screws.ALLOWABLE_DIVISOR


def test_lateral_load_of_table_8_4() -> None:
    """Hardwood of gravity 0.57 to 0.74: K 44.13 N/mm², a 5.49 mm (No. 12) screw."""
    assert screws.screw_lateral(44.13, 5.49) == pytest.approx(1330, abs=1)


def test_both_at_once_fill_a_screw_together() -> None:
    assert screws.screw_use(300, 300, 0, 500) == 1
    assert screws.screw_use(150, 300, 250, 500) == 1


PSI = POUND / INCH**2  # MPa


@pytest.mark.parametrize("column", ["wood_screw_MPa", "lag_screw_MPa"])
def test_table_8_4_is_the_inch_pound_printing_converted(column: str) -> None:
    """That printing has whole tens of pounds per square inch: 3360, 4640, 6400 for wood screws in hardwood."""
    for row in load(wood_tables.LATERAL):
        pounds = row.number(column) / PSI
        assert pounds == pytest.approx(round(pounds / 10) * 10, abs=0.8), row


# Wire diameters of common nails in thousandths of an inch (ASTM F1667, quoted from memory).
NAILS = {
    "6d": 113, "8d": 131, "10d": 148, "12d": 148, "16d": 162, "20d": 192, "30d": 207, "40d": 225, "50d": 244,
    "60d": 262,
}  # fmt: skip


def test_nails_are_the_inch_printing_converted() -> None:
    """Lengths rise by quarters of an inch from 2 in, diameters are those of the wire."""
    rows = {row.text("size"): row for row in load(wood_tables.NAIL)}
    assert set(rows) == set(NAILS)
    for size, thousandths in NAILS.items():
        assert rows[size].number("diameter_mm") == pytest.approx(thousandths / 1000 * INCH, abs=0.012)


def test_lag_screws_of_table_8_11_are_sixteenths_of_an_inch() -> None:
    for row in load(wood_tables.LAG_PERPENDICULAR):
        sixteenths = row.number("shank_diameter_mm") / INCH * 16
        assert sixteenths == pytest.approx(round(sixteenths), abs=0.05)


def test_lag_screw_factors_change_steadily() -> None:
    """No step between neighbors of Tables 8-10 and 8-11 is more than a quarter larger than the one before it, or so."""
    for table, argument in (
        (wood_tables.LAG_THICKNESS, "thickness_over_diameter"),
        (wood_tables.LAG_PERPENDICULAR, "shank_diameter_mm"),
    ):
        rows = [(row.number(argument), row.number("factor")) for row in load(table)]
        slopes = [abs((b[1] - a[1]) / (b[0] - a[0])) for a, b in pairwise(rows)]
        assert max(slopes) < 0.34
        assert all(later < 1.3 * before + 0.06 for before, later in pairwise(slopes))
