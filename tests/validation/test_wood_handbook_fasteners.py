"""Screws: Wood Handbook, chapter 8 and its Table 8-4, and the National Design Specification for Wood Construction.

Compared: `screw-withdrawal`, `screw_lateral`.
"""

from __future__ import annotations

import pytest

from advisor.physics import screws

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
