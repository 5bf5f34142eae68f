"""The shop plan: tables against printed speeds and tapers, the plan's order, what is refused."""

from __future__ import annotations

from math import pi
from typing import Any

import pytest

from advisor.center_command import CenterInputError, center_answer, center_make
from advisor.centers.make_steps import crank
from advisor.centers.make_tail import opening_share
from advisor.centers.metals import SPEEDS, TAPERS, CuttingRate, growth, metal, taper
from advisor.data.tables import load
from advisor.sources import source
from advisor.units import System

PLAIN = {"diameter": "1 in", "hole": "0.251 in", "cutter": "1/2 in", "depth": "0.200 in"}


def planned(**changes: str) -> dict[str, Any]:
    return center_make({**PLAIN, **changes}).as_dict()


def said(plan: dict[str, Any]) -> str:
    return " ".join(step["text"] for step in plan["steps"])


@pytest.mark.parametrize(("diameter", "rpm", "feet"), [(1.5, 770, 302), (0.251, 330, 21.7)])
def test_speeds_of_the_shop(diameter: float, rpm: float, feet: float) -> None:
    """1.5 in at 770 rpm, a 0.251 in reamer at 330 rpm (common practice, no source): V = π·D·n/12."""
    assert CuttingRate("any", diameter * 25.4, feet, feet, feet).rpm(feet) == pytest.approx(rpm, rel=2e-3)
    assert pi * diameter * rpm / 12 == pytest.approx(feet, rel=2e-3)


def test_practice_lies_in_the_tables() -> None:
    row = metal("303")
    assert row.number("turn_carbide_low") <= 302 <= row.number("turn_carbide_high")
    low, high = row.number("drill_low") / 3, row.number("drill_high") * 2 / 3
    assert 0.7 * low <= 21.7 <= high


def test_growth_of_a_warm_part() -> None:
    assert growth(metal("303"), 25, 25) * 1000 == pytest.approx(10.75)
    assert growth(metal("brass"), 25.4, 30) / 25.4e-6 == pytest.approx(615)


@pytest.mark.parametrize(
    ("number", "half_angle"), [(0, 1.491), (1, 1.429), (2, 1.431), (3, 1.438), (4, 1.488), (5, 1.507)]
)
def test_tapers(number: int, half_angle: float) -> None:
    assert taper(number).half_angle == pytest.approx(half_angle, abs=6e-4)


def test_every_row_names_known_sources() -> None:
    for table in (SPEEDS, TAPERS):
        for row in load(table):
            assert all(source(key).title for key in row.text("source").split(" "))


def test_reaming_is_half_the_drilling_speed_from_a_third_to_two_thirds() -> None:
    speeds = {s["operation"]: s for s in planned(metal="12L14", lathe="industrial")["speeds"]}
    drill, ream = speeds["drilling"], speeds["reaming"]
    assert drill["speed_m_min"] == pytest.approx(120 * 0.3048)
    assert ream["speed_m_min"] == pytest.approx(drill["speed_m_min"] / 2)
    surface = pi * ream["diameter_mm"] / 1000
    assert ream["rpm_low"] * surface == pytest.approx(drill["speed_m_min"] / 3)
    assert ream["rpm_high"] * surface == pytest.approx(130 * 0.3048 * 2 / 3)


def test_a_light_lathe_starts_slower() -> None:
    light, industrial = planned(metal="O1"), planned(metal="O1", lathe="industrial")
    assert light["speeds"][0]["rpm"] == pytest.approx(0.7 * industrial["speeds"][0]["rpm"])
    assert light["speeds"][0]["rpm_high"] == industrial["speeds"][0]["rpm_high"]


def test_square_block_for_two_and_four_teeth_only() -> None:
    assert "square block and" in said(planned())
    assert "square block and" in said(planned(teeth="2"))
    for teeth in ("3", "5", "6"):
        text = said(planned(teeth=teeth, hole="0.6 in", cutter="3/8 in", depth="0.1 in"))
        assert "dividing head" in text


def test_tapered_shank_is_turned_after_the_teeth() -> None:
    plan = planned(shank="taper", shank_taper="3")
    stages = [step["stage"] for step in plan["steps"]]
    assert stages.index("teeth") < stages.index("shank")
    assert plan["shank"]["large_diameter_mm"] == 23.825
    assert "does not sit in a block" in said(plan)


def test_straight_shank_seats_on_its_shoulder_and_is_struck_safely() -> None:
    text = said(planned())
    assert "Undercut" in text
    assert "spreads the end and not the diameter" in text


@pytest.mark.parametrize("point", ["fixed", "sprung", "floating"])
def test_point_and_its_hole(point: str) -> None:
    plan = planned(point=point)
    assert plan["drill_mm"] < plan["center"]["hole_mm"]
    assert "ream to 0.2510 in" in said(plan)


@pytest.mark.parametrize(("included", "friction_low"), [(60.0, 0.362), (120.0, 0.108)])
def test_blunt_cone_hardly_opens_the_end(included: float, friction_low: float) -> None:
    assert opening_share(included) == pytest.approx(friction_low, abs=2e-3)


def test_tail_cup_by_default_and_cone_when_asked() -> None:
    cup, cone = planned()["tail"], planned(tail="cone")["tail"]
    assert cup["opening_share"] == 0.0
    assert 10 <= cup["ring_mm"] <= 16
    assert cone["opening_share"] < cone["opening_share_60"] / 3
    assert planned(work_end="12 mm")["tail"]["ring_mm"] == pytest.approx(7.2)


def test_head_too_large_for_the_end_is_said() -> None:
    assert "quarter to a half" in " ".join(planned(work_end="1 in")["warnings"])
    assert "quarter to a half" not in " ".join(planned(work_end="3 in")["warnings"])


def test_the_test_is_done_by_wrench_and_hand_with_the_power_off() -> None:
    plan = planned(torque="5 N-m")
    assert "Power off" in plan["test"][0]
    assert "torque wrench" in " ".join(plan["test"])
    assert "by hand" in " ".join(plan["test"])
    assert "tailstock" in plan["test"][0]
    assert "Runout" in " ".join(plan["inspection"])


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"metal": "butter"}, "metal"),
        ({"shank": "square"}, "shank"),
        ({"shank_taper": "9"}, "shank_taper"),
        ({"shank_diameter": "2 in"}, "shank_diameter"),
        ({"work_end": "big"}, "work_end"),
        ({"depth": "0.3 in"}, "depth"),
        ({"pint": "fixed"}, "pint"),
    ],
)
def test_bad_input_names_the_field(changes: dict[str, str], field: str) -> None:
    with pytest.raises(CenterInputError) as caught:
        planned(**changes)
    assert caught.value.field == field


def test_text_holds_plan_and_center() -> None:
    text = "\n".join(center_make(PLAIN).text)
    for part in ("Order of work", "Speeds", "µm", "tenths", "Inspection", "Test on a scrap blank", "Cautions", "Moves"):
        assert part in text
    assert "None" not in text


@pytest.mark.parametrize(
    ("teeth", "told"),
    [
        (4, "10 turns of a 40:1 crank"),
        (3, "13 turns of a 40:1 crank and 5 holes of the 15-hole circle"),
        (6, "6 turns of a 40:1 crank and 10 holes of the 15-hole circle"),
        (7, "5 turns of a 40:1 crank and 15 holes of the 21-hole circle"),
        (11, "3 turns of a 40:1 crank and 21 holes of the 33-hole circle"),
        (13, "3 turns of a 40:1 crank and 3 holes of the 39-hole circle"),
        (16, "2 turns of a 40:1 crank and 8 holes of the 16-hole circle"),
        (30, "1 turn of a 40:1 crank and 5 holes of the 15-hole circle"),
    ],
)
def test_the_crank_is_told_in_holes_of_a_plate(teeth: int, told: str) -> None:
    """Whole turns and holes over circle make forty turns for one turn of the work (common practice, no source)."""
    assert crank(teeth) == told
    words = told.replace("-hole", "").split()
    share = int(words[7]) / int(words[11]) if len(words) > 6 else 0.0
    assert (int(words[0]) + share) * teeth == pytest.approx(40)


def test_a_circle_that_no_plate_has_is_told_as_a_fraction() -> None:
    assert crank(53) == "0 turns of a 40:1 crank and 40/53 of a turn"


def test_the_tail_center_has_a_whole_plan_of_its_own() -> None:
    for words, must in (
        ({}, ("same steel", "flat shoulder", "ring", "pin", "Runout", "Dead")),
        ({"tail": "cone", "shank_taper": "2"}, ("same steel", "Morse-type taper", "120 deg", "Runout", "Dead")),
    ):
        steps = " ".join(planned(**words)["tail"]["steps"])
        assert all(word in steps for word in must), steps


def test_an_inch_plan_talks_in_inches_and_a_metric_one_in_millimeters() -> None:
    told = {system: " ".join(center_make(PLAIN, system).as_dict()["tail"]["steps"]) for system in System}
    assert "ring 0.63 in in diameter" in told[System.INCH]
    assert " mm" not in told[System.INCH]
    assert "ring 16 mm in diameter" in told[System.METRIC]
    assert "0.63" not in told[System.METRIC]


def test_teeth_of_two_settings_are_not_said_to_be_lost_by_a_thousandth() -> None:
    """The cutter passes the very corner of the rim by nothing: what it nibbles there is no tooth lost."""
    pairs = {"diameter": "1.5 in", "hole": "3/8 in", "cutter": "5/8 in", "depth": "0.2 in", "teeth": "6"}
    for effect in center_answer(pairs).as_dict()["sensitivity"]:
        assert effect["tip_loss_mm"] == 0, effect
        assert abs(effect["land_change_mm"]) < 0.04, effect
