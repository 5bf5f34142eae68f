"""`advisor center`: what is read, what is refused, what is chosen, the moves, the errors, the warnings."""

from __future__ import annotations

from itertools import pairwise
from math import sqrt, tan
from pathlib import Path
from typing import Any

import pytest

from advisor.center_command import CenterInputError, center_answer
from advisor.units import System

INCH = 25.4
PLAIN = {"diameter": "1 in", "hole": "0.251 in", "cutter": "1/2 in", "depth": "0.200 in"}
FIELDS = {
    *("y_mm", "x_mm", "land_hole_mm", "land_mid_mm", "land_od_mm", "tip_angle_deg", "tooth_height_mm", "tip_loss_mm"),
    *("face_depth_mm", "core_radius_mm", "thickness_mm", "root_thickness_mm", "wall_clear"),
    *("settings", "schedule", "warnings"),
}


def asked(**changes: str | None) -> dict[str, Any]:
    pairs = {**PLAIN, **changes}
    return center_answer({k: v for k, v in pairs.items() if v is not None}).as_dict()


def refused(**changes: str | None) -> CenterInputError:
    with pytest.raises(CenterInputError) as caught:
        asked(**changes)
    assert caught.value.accepted
    assert caught.value.field in str(caught.value)
    return caught.value


def said(answer: dict[str, Any]) -> str:
    return " ".join(answer["warnings"])


def test_worked_example_of_the_process() -> None:
    answer = asked()
    assert answer["y_mm"] / INCH == pytest.approx(0.2499, abs=5e-5)
    assert answer["x_mm"] / INCH == pytest.approx(0.05)
    assert answer["settings"] == [{"y_mm": answer["y_mm"], "z_mm": 0.0, "index_deg": 0.0}]
    assert answer.keys() >= FIELDS
    assert len(answer["thickness_mm"]) == 5
    assert answer["thickness_mm"] == sorted(answer["thickness_mm"])


def test_plain_case_warns_of_nothing() -> None:
    assert asked(teeth="4")["warnings"] == []


def test_inch_and_metric_give_the_same_tooth() -> None:
    metric = asked(diameter="25.4 mm", hole="6.3754mm", cutter="12.7 mm", depth="5.08 mm", land="0.127 mm")
    assert metric["y_mm"] == pytest.approx(asked()["y_mm"])


# --- what is read


@pytest.mark.parametrize(
    ("field", "text"),
    [
        ("diameter", "1"),
        ("diameter", "-1 in"),
        ("hole", "0.251 kg"),
        ("cutter", "half"),
        ("depth", "1e400 in"),
        ("teeth", "9"),
        ("teeth", "1"),
        ("teeth", "4.5"),
        ("teeth", "⁴"),
        ("settings", "3"),
        ("rotation", "left"),
        ("cutters", "[]"),
        ("tip_angle", "95 deg"),
        ("thrust", "600"),
    ],
)
def test_unreadable_input_names_the_field(field: str, text: str) -> None:
    error = refused(**{field: text})
    assert error.field == field
    assert error.value == text


def test_unknown_field_is_met_with_the_nearest() -> None:
    assert "diameter" in str(refused(diamter="1 in"))


@pytest.mark.parametrize("field", ["diameter", "hole", "cutter", "depth"])
def test_missing_field_is_named(field: str) -> None:
    assert refused(**{field: None}).field == field


def test_bare_zero_and_bare_angle_need_no_unit() -> None:
    assert asked(land="0", height_offset="0", overshoot="0")["land_od_mm"] == pytest.approx(0)
    assert asked(depth=None, tip_angle="15")["tip_angle_deg"] == pytest.approx(15)


def test_bare_lengths_with_the_unit_said_once() -> None:
    pairs = {"units": "inch", "diameter": "1", "hole": ".251", "cutter": "1/2", "depth": "0.2"}
    assert center_answer(pairs).as_dict()["y_mm"] == pytest.approx(asked()["y_mm"])


# --- what cannot be cut


@pytest.mark.parametrize(
    ("changes", "field", "why"),
    [
        ({"depth": "0.3 in"}, "depth", "hook"),
        ({"hole": "0.99 in"}, "hole", "ring"),
        ({"hole": "1.5 in"}, "hole", "ring"),
        ({"height_offset": "-0.13 in"}, "height_offset", "outside the hole"),
        ({"corner_radius": "0.2 in"}, "corner_radius", "flat"),
        ({"land": "20 mm"}, "land", "nothing would be cut"),
        ({"overshoot": "0.3 in"}, "overshoot", "whole tooth"),
    ],
)
def test_what_cannot_be_cut_is_refused_in_the_shops_words(changes: dict[str, str], field: str, why: str) -> None:
    error = refused(**changes)
    assert error.field == field
    assert why in error.message


# --- solved backwards


def test_tip_angle_gives_the_depth_or_the_cutter() -> None:
    assert asked(depth=None, tip_angle="15 deg")["depth_mm"] / INCH == pytest.approx(0.5 * 0.371, abs=3e-4)
    answer = asked(cutter=None, depth="0.240 in", tip_angle="13.4 deg")
    assert answer["cutter_mm"] / INCH == pytest.approx(0.625, abs=1e-3)
    assert answer["tip_angle_deg"] == pytest.approx(13.4)


def test_out_of_a_drawer_the_smallest_that_is_mild_enough() -> None:
    drawer = "[3/4 in, 3/8 in, 1/2 in, 5/8 in]"
    answer = asked(cutter=None, cutters=drawer, depth="0.240 in", min_tip_angle="12 deg")
    assert answer["cutter_mm"] == pytest.approx(0.625 * INCH)
    assert [c["chosen"] for c in answer["choices"]] == [False, False, True, False]
    assert asked(cutter=None, cutters=drawer, depth="0.240 in")["cutter_mm"] == pytest.approx(0.625 * INCH)


def test_out_of_a_drawer_with_an_angle_alone_the_highest_tooth() -> None:
    answer = asked(cutter=None, depth=None, cutters="[3/8 in, 1/2 in]", tip_angle="15 deg")
    assert answer["cutter_mm"] == pytest.approx(0.5 * INCH)
    assert answer["tip_angle_deg"] == pytest.approx(15)


@pytest.mark.parametrize("changes", [{"tip_angle": "15"}, {"cutters": "[1/2 in]"}])
def test_too_much_is_refused(changes: dict[str, str]) -> None:
    refused(**changes)


def test_sharper_than_asked_is_refused_with_what_would_do() -> None:
    error = refused(depth="0.240 in", min_tip_angle="12 deg")
    assert error.field == "min_tip_angle"
    assert "cutter of" in error.accepted
    assert asked(min_tip_angle="11")["tip_angle_deg"] == pytest.approx(11.5, abs=0.05)


def test_nothing_in_the_drawer_says_why() -> None:
    error = refused(cutter=None, cutters="[3/8 in, 1/2 in]", depth="0.240 in", min_tip_angle="12 deg")
    assert "deeper than the cutter's radius" in error.message
    assert "tip 2.3 deg" in error.message


# --- settings and teeth


@pytest.mark.parametrize(("teeth", "settings"), [("2", 2), ("3", 2), ("4", 1), ("5", 2), ("6", 2), ("8", 2)])
def test_auto_takes_two_settings_where_one_leaves_no_cutting_tooth(teeth: str, settings: int) -> None:
    hole = "0.8 in" if int(teeth) > 4 else "0.251 in"
    answer = asked(teeth=teeth, hole=hole, cutter="1/4 in", depth="0.1 in")
    assert len(answer["settings"]) == settings
    assert "plateau" not in said(answer)


def test_one_setting_of_six_teeth_is_warned_about() -> None:
    assert "plateau" in said(asked(teeth="6", settings="1", cutter="3/8 in", depth="0.15 in"))


def test_islands_ask_for_a_bore() -> None:
    answer = asked(teeth="6", cutter="3/8 in", depth="0.15 in")
    assert "Islands" in said(answer)
    assert answer["bore_mm"] / INCH == pytest.approx(0.58, abs=0.006)
    assert "Islands" not in said(asked(teeth="6", hole="0.6 in", cutter="3/8 in", depth="0.15 in"))


def test_reverse_mirrors_y_and_the_index() -> None:
    forward = asked(teeth="6", hole="0.6 in", cutter="3/8 in", depth="0.15 in")
    back = asked(teeth="6", hole="0.6 in", cutter="3/8 in", depth="0.15 in", rotation="reverse")
    for a, b in zip(forward["settings"], back["settings"], strict=True):
        assert (b["y_mm"], b["z_mm"], b["index_deg"]) == (-a["y_mm"], a["z_mm"], -a["index_deg"])
    assert back["land_od_mm"] == forward["land_od_mm"]
    for a, b in zip(forward["schedule"], back["schedule"], strict=True):
        assert (b["x_mm"], b["z_mm"]) == (a["x_mm"], a["z_mm"])
        assert (b["y_mm"] is None) == (a["y_mm"] is None)
        assert a["y_mm"] is None or b["y_mm"] == -a["y_mm"]


@pytest.mark.parametrize(
    ("teeth", "rotation", "sense"),
    [
        ("3", "forward", "from +Z toward +Y"),
        ("3", "reverse", "from +Y toward +Z"),
        ("6", "forward", "from +Y toward +Z"),
        ("6", "reverse", "from +Z toward +Y"),
    ],
)
def test_the_blank_turns_against_the_pocket(teeth: str, rotation: str, sense: str) -> None:
    """Three teeth: the second pocket lies 30 deg from +Y toward +Z, so the blank is turned the other way."""
    answer = asked(teeth=teeth, hole="0.6 in", cutter="3/8 in", depth="0.1 in", rotation=rotation)
    moves = [m["text"] for m in answer["schedule"] if m["setting"] == "B" and m["action"] == "index"]
    assert moves
    assert all("turn the blank 30 deg " + sense in text for text in moves)


# --- warnings


def test_a_knife_is_called_one() -> None:
    answer = asked(depth="0.240 in")
    assert answer["tip_angle_deg"] == pytest.approx(2.29, abs=0.005)
    assert "knife" in said(answer)
    assert "knife" not in said(asked(depth="0.240 in", cutter="5/8 in"))


def test_pushing_past_center_lowers_the_tooth() -> None:
    answer = asked(depth="0.240 in", land="0", overshoot="0.001 in")
    assert answer["tip_loss_mm"] / INCH == pytest.approx(0.0145, abs=5e-5)
    assert not answer["wall_clear"]
    assert "below the turned face" in said(answer)


def test_lowered_at_one_end_only_is_seen() -> None:
    answer = asked(teeth="8", settings="1", cutter="1/4 in", depth="0.11 in", land="0", overshoot="0.008 in")
    assert answer["tip_loss_mm"] > 0
    assert answer["tip_loss_hole_mm"] == 0


def test_cutter_above_center_splits_and_below_gains_nothing() -> None:
    assert "split" in said(asked(height_offset="0.02 in"))
    assert "toward the axis" in said(asked(height_offset="-0.02 in"))


def test_a_cutter_too_large_for_the_rim() -> None:
    assert "too large" in said(asked(teeth="6", settings="1", cutter="3/4 in", depth="0.15 in"))


def test_a_razor_edge_is_told_to_leave_a_land() -> None:
    answer = asked(land="0")
    assert "errors of setting up" in said(answer)
    assert answer["recommended_land_mm"] / INCH == pytest.approx(0.004)


# --- strength


def test_thrust_and_torque_of_the_case() -> None:
    answer = asked(depth="0.240 in", thrust="600 N", torque="5 N-m", end_strength="45 MPa")
    strong = answer["strength"]
    assert strong["bite_mm"] > 1
    assert "drill" in said(answer)
    assert "bend" in said(answer)
    assert answer["recommended_land_mm"] > 0.3
    assert asked(thrust="50 N")["strength"]["bite_mm"] == 0
    assert "does not push the teeth in" in said(asked(thrust="50 N"))


def test_assumed_strength_is_listed() -> None:
    assert "end_strength" in [entry["field"] for entry in asked()["assumed"]]
    assert "end_strength" not in [entry["field"] for entry in asked(end_strength="40 MPa")["assumed"]]


# --- sensitivity: the slopes dw = dY + dZ - tan ψ·dh - h/(2k)·dc, and half of dc where Y is touched off


def test_what_a_thousandth_does() -> None:
    effects = {e["what"]: e for e in asked(land="0.02 in")["sensitivity"]}
    step, depth, cutter = 0.001 * INCH, 0.2 * INCH, 0.5 * INCH
    chord = sqrt(depth * (cutter - depth))
    slope = tan(0.2013579)
    for what, expected in (
        ("Y walked in further", -step),
        ("Y stopped short", step),
        ("cutter end lower", -step),
        ("cut deeper", -slope * step),
        ("cut shallower", slope * step),
        ("cutter larger, Y set from the axis", -depth / (2 * chord) * step),
        ("cutter larger, Y touched off on the rim", step / 2 * (1 - sqrt(depth / (cutter - depth)))),
        ("indexed 0.05 deg too far", -0.5 * INCH * 0.05 * 0.0174533),
    ):
        assert effects[what]["land_change_mm"] == pytest.approx(expected, abs=0.02 * step), what


def test_at_a_razor_edge_the_height_suffers() -> None:
    effects = {e["what"]: e for e in asked(depth="0.240 in", land="0")["sensitivity"]}
    assert effects["Y walked in further"]["tip_loss_mm"] / INCH == pytest.approx(0.0145, abs=5e-5)


# --- moves


def test_moves_in_the_order_of_the_shop() -> None:
    answer = asked()
    moves = answer["schedule"]
    assert [m["step"] for m in moves] == list(range(1, len(moves) + 1))
    actions = [m["action"] for m in moves]
    assert actions[:3] == ["zero"] * 3
    assert actions.index("depth") < actions.index("nibble") < actions.index("climb")
    assert actions[-2:] == ["withdraw", "index"]
    climb = next(m for m in moves if m["action"] == "climb")
    assert climb["y_mm"] == pytest.approx(answer["y_mm"])
    heights = {round(m["z_mm"], 6) for m in moves if m["action"] == "height"}
    assert heights == {-12.7}
    assert min(m["x_mm"] for m in moves if m["x_mm"] is not None) == pytest.approx(-5.08)
    nibbles = [m["y_mm"] for m in moves if m["action"] == "nibble"]
    assert all(y - answer["y_mm"] == pytest.approx(0.002 * INCH) for y in nibbles)


def test_both_settings_are_in_the_moves_when_there_are_two() -> None:
    answer = asked(teeth="6", hole="0.6 in", cutter="3/8 in", depth="0.15 in")
    moves = answer["schedule"]
    for name, setting in zip("AB", answer["settings"], strict=True):
        climb = next(m for m in moves if m["setting"] == name and m["action"] == "climb")
        assert climb["y_mm"] == pytest.approx(setting["y_mm"])
        height = next(m for m in moves if m["setting"] == name and m["action"] == "height")
        assert height["z_mm"] == pytest.approx(setting["z_mm"] - 12.7)
    assert "30 deg" in " ".join(m["text"] for m in moves if m["setting"] == "B")


def test_nibbles_are_even_and_start_in_air() -> None:
    from advisor.centers.choose import place
    from advisor.centers.inputs import read_wanted
    from advisor.centers.schedule import nibble_places, scallop

    wanted = read_wanted(PLAIN)
    center = place(wanted, 12.7, 5.08)
    places = nibble_places(center, center.driving, 5.08, 0.05)
    steps = [a - b for a, b in pairwise(places)]
    assert max(steps) == pytest.approx(min(steps))
    assert max(steps) <= 12.7 / 8 + 1e-9
    assert places[0] - sqrt(5.08 * (12.7 - 5.08)) > 12.7
    for step, cusp in ((0.02, 0.0002), (0.04, 0.000801), (0.08, 0.003221)):
        assert scallop(center, step * INCH) == pytest.approx(cusp * INCH, rel=5e-3)


# --- what a person reads


@pytest.mark.parametrize("system", list(System))
def test_text_says_the_numbers(system: System) -> None:
    text = "\n".join(center_answer(PLAIN, system).text)
    assert ("0.2499 in" if system is System.INCH else "6.349 mm") in text
    for part in ("The tooth", "Moves", "What an error does", "Strength", "Assumed", "eye protection"):
        assert part in text
    assert "None" not in text


def test_drawing_of_another_kind_is_refused(tmp_path: Path) -> None:
    with pytest.raises(CenterInputError, match=r"\.svg or \.dxf"):
        center_answer(PLAIN).draw(tmp_path / "tooth.png")


def test_a_blunt_tip_is_told_like_a_sharp_one() -> None:
    """Teeth of 30 to 35 degrees are usual (common practice, no source)."""
    said = " ".join(center_answer({**PLAIN, "cutter": "2 in", "depth": "0.1 in"}).as_dict()["warnings"])
    assert "is blunt" in said
    assert "30 to 35 deg is usual" in said
    mild = " ".join(center_answer({**PLAIN, "cutter": "3/4 in", "depth": "0.2 in"}).as_dict()["warnings"])
    assert "blunt" not in mild
