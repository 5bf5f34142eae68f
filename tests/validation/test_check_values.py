"""Every figure against values worked out without this program.

Each row of `check_values.csv` names its route: finite elements, boundary-value problems, sums over small pieces,
geometry libraries, published tables. Rows marked `formula only` catch slips in reading the formula and nothing more.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from advisor.figure import all_figures, reckon

SOURCES = (
    "statics",
    "kinematics",
    "dynamics",
    "geometry",
    "screw-theory",
    "tooth-model",
    "split-model",
    "floor-model",
    "thermal-expansion",
)
FILE = Path(__file__).parent / "check_values.csv"
ROWS = list(csv.DictReader(FILE.read_text(encoding="utf-8").splitlines()))


@pytest.mark.parametrize("row", ROWS, ids=[f"{row['id']}-{row['figure']}" for row in ROWS])
def test_figure_agrees_with_the_outside(row: dict[str, str]) -> None:
    words = dict(word.split("=", 1) for word in row["inputs"].split())
    answer = reckon(row["figure"], words)
    expected, tolerance = float(row["expected"]), float(row["rel_tol"])
    assert answer.unit == row["unit"]
    assert answer.value == pytest.approx(expected, rel=tolerance, abs=tolerance if expected == 0 else 0)


def test_every_figure_has_an_outside_value() -> None:
    assert set(all_figures()) == {row["figure"] for row in ROWS}
