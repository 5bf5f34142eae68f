"""Toothed centers measured on solids: blank and walked-in cutter cut by mesh booleans, then measured on plane slices.

`center_cases.csv` and `center_check_values.csv` were measured without this program. The first measures the land at the
hole a fiftieth of the ring inside its edge, at the rim a thousandth, tips at 0.98 of the rim, the core at 0.999 of the
depth: a corner cannot be measured. Those radii are asked for as `radii=`.
"""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Any

import pytest

from advisor.center_command import center_answer

SOURCES = ("geometry",)
Row = dict[str, str]
Case = tuple[Row, dict[str, Any]]
HERE = Path(__file__).parent
INCH = 25.4
WITHIN = 2e-5 * INCH
DEGREES = 0.1
SHARES = ("10", "25", "50", "75", "95")


def rows(name: str) -> list[Row]:
    with (HERE / name).open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


CASES = rows("center_cases.csv")
CHECKS = rows("center_check_values.csv")


def number(row: Row, column: str) -> float | None:
    text = row[column]
    return None if text in ("", "nan") else float(text)


def size(row: Row, column: str) -> float:
    value = number(row, column)
    assert value is not None, column
    return value


def radii(row: Row) -> tuple[float, ...]:
    hole, rim = size(row, "d_mm") / 2, size(row, "D_mm") / 2
    return hole + 0.02 * (rim - hole), (hole + rim) / 2, 0.98 * rim, 0.999 * rim


def asked(row: Row) -> dict[str, str]:
    pairs = {
        "diameter": "D",
        "hole": "d",
        "cutter": "c",
        "depth": "h",
        "land": "land_target",
        "height_offset": "Zc",
        "overshoot": "overshoot",
        "corner_radius": "corner_r",
    }
    given = {field: f"{row[column + '_mm']} mm" for field, column in pairs.items()}
    given |= {"teeth": row["N"], "settings": "2" if row["mode"] == "two" else "1"}
    given |= {"thrust": "600 N", "end_strength": "45 MPa"}
    return given | {"radii": "[" + ", ".join(f"{r:.9f} mm" for r in radii(row)) + "]"}


@pytest.fixture(scope="module", params=CASES, ids=[row["case"] for row in CASES])
def case(request: pytest.FixtureRequest) -> Case:
    return request.param, center_answer(asked(request.param)).as_dict()


def compare(row: Row, column: str, value: Any, tolerance: float = WITHIN) -> bool:
    """Whether the column was measured; fails when the value is not the measured one."""
    expected = number(row, column)
    if expected is None:
        return False
    scale = INCH if column.endswith("_in") else 1.0
    assert value == pytest.approx(expected * scale, abs=tolerance), column
    return True


def test_settings_are_those_the_solid_was_cut_with(case: Case) -> None:
    row, answer = case
    compare(row, "Xc_in", answer["x_mm"])
    compare(row, "Yc_in", answer["y_mm"])
    assert len(answer["settings"]) == (2 if row["mode"] == "two" else 1)
    last = answer["settings"][-1]
    for column, value in (("Y2_in", last["y_mm"]), ("Z2_in", last["z_mm"]), ("index2_deg", last["index_deg"])):
        compare(row, column, value)


def test_lands(case: Case) -> None:
    row, answer = case
    at_hole, middle, _, rim = answer["at_radii"]
    assert compare(row, "land_hole_in", at_hole["land_mm"])
    assert compare(row, "land_mid_in", answer["land_mid_mm"])
    assert middle["land_mm"] == pytest.approx(answer["land_mid_mm"])
    assert compare(row, "land_od_in", rim["land_mm"])


def test_thickness(case: Case) -> None:
    row, answer = case
    measured = 0
    for i, share in enumerate(SHARES):
        measured += compare(row, f"thick_mid_{share}pct_in", answer["thickness_mm"][i])
        measured += compare(row, f"thick_od_{share}pct_in", answer["at_radii"][3]["thickness_mm"][i])
    assert measured == 10


def test_tips(case: Case) -> None:
    row, answer = case
    _, middle, outer, _ = answer["at_radii"]
    compare(row, "tipdrop_mid_in", middle["tip_loss_mm"])
    compare(row, "tipdrop_od_in", outer["tip_loss_mm"])
    compare(row, "tipangle_mid_deg", middle["tip_angle_deg"], DEGREES)
    compare(row, "tipangle_od_deg", outer["tip_angle_deg"], DEGREES)


def test_headline_tip_is_the_one_that_was_measured(case: Case) -> None:
    row, answer = case
    if row["N"] == "4" or number(row, "overshoot_in") == 0:
        compare(row, "tipdrop_mid_in", answer["tip_loss_mm"])
        compare(row, "tipangle_mid_deg", answer["tip_angle_deg"], DEGREES)
        assert answer["tooth_height_mm"] == pytest.approx(size(row, "h_mm") - answer["tip_loss_mm"])
    assert answer["wall_clear"] == (number(row, "overshoot_in") == 0)


def test_faces_core_and_section(case: Case) -> None:
    row, answer = case
    compare(row, "face_depth_mid_in", answer["face_depth_mm"])
    compare(row, "face_depth_od_in", answer["face_depth_od_mm"])
    assert compare(row, "core_radius_at_root_in", answer["core_radius_mm"])
    assert compare(row, "web_hole_to_pocket_at_root_in", answer["web_mm"])
    area = size(row, "section_area_half_h_in2") * INCH**2
    assert answer["section_area_half_mm2"] == pytest.approx(area, abs=2.5e-5 * INCH**2)


def test_bite(case: Case) -> None:
    row, answer = case
    assert compare(row, "penetration_600N_45MPa_in", answer["strength"]["bite_mm"])


@pytest.mark.parametrize("row", CHECKS, ids=[row["id"] for row in CHECKS])
def test_searched_settings(row: Row) -> None:
    """The solid's cutter was moved until the wanted land was measured; the formulas must land on the same place."""
    answer = center_answer(dict(pair.split("=") for pair in row["inputs"].split())).as_dict()
    expected, tolerance = float(row["expected"]), float(row["rel_tol"])
    field = row["figure"].removeprefix("center.")
    assert answer[field] == pytest.approx(expected, abs=tolerance * (expected or 1))
