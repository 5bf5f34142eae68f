"""What every careful turner does must come out as enough, and the traps must not."""

from __future__ import annotations

from typing import get_args

import pytest

from advisor.models.words import GlueKind
from advisor.reckoning.holds import hold_figures, hold_speed
from advisor.reckoning.holds.screwed import group_moment, lateral_constant
from advisor.reckoning.holds.workmanship import adhesive
from tests.reckoning.holds.hold_bench import BOWL, ROD, Section, divided, job, judged, ratios

INCH = 25.4
TAPED: Section = {**BOWL, "purpose": "other", "diameter": 4 * INCH, "length": 0.5 * INCH}
TAPE: Section = {"method": "double-sided-tape", "glue": {"diameter": 75.0}}
FINISHING: Section = {"operation": "finishing"}
SHAPING: Section = {"operation": "shaping"}
PVA: Section = {"glue": {"kind": "pva", "diameter": 75.0}}
PEN: Section = {**ROD, "form": "tube", "purpose": "pen", "diameter": 15.0, "length": 60.0}
SQUARE: Section = {**ROD, "form": "square", "state": "not-round", "diameter": 2 * INCH * 2**0.5, "length": 300.0}

SUITS: list[tuple[str, Section, Section, Section]] = [
    ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, FINISHING),
    ("faceplate-screws", {**BOWL, "moisture": "green", "state": "not-round"}, {"screws": {"count": 4}}, {}),
    ("screw-chuck", {**BOWL, "diameter": 6 * INCH, "length": 75.0}, {}, SHAPING),
    ("glue-block", {**BOWL, "diameter": 6 * INCH, "length": 75.0}, PVA, SHAPING),
    ("mandrel", PEN, {}, SHAPING),
    ("double-sided-tape", TAPED, TAPE, FINISHING),
    ("collet", {**ROD, "diameter": 20.0, "length": 60.0}, {}, {}),
]
ENOUGH: list[tuple[str, Section, Section, Section]] = [
    ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, {"operation": "roughing"}),
    ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, {"operation": "hollowing"}),
    ("spur-drive", SQUARE, {}, {}),
    ("double-sided-tape", TAPED, {**TAPE, "tail": {"kind": "none"}}, FINISHING),
    (
        "jaws-in-recess",
        {**BOWL, "purpose": "platter", "diameter": 12 * INCH, "length": 38.0},
        {"recess": {"diameter": 75.0, "depth": 4.0, "wall": 37.0}},
        FINISHING,
    ),
    ("two-spur-drive", {**BOWL, "form": "half-log", "state": "not-round", "moisture": "green"}, {}, {}),
    ("friction-block", {**BOWL, "state": "finished"}, {}, FINISHING),
]


@pytest.mark.parametrize(("method", "work", "hold", "cut"), SUITS)
def test_suits(method: str, work: Section, hold: Section, cut: Section) -> None:
    figures = judged(method, work, hold, cut)
    assert ratios(figures)[0] >= 1
    assert divided(figures) >= 1


@pytest.mark.parametrize(("method", "work", "hold", "cut"), ENOUGH)
def test_enough_with_care(method: str, work: Section, hold: Section, cut: Section) -> None:
    figures = judged(method, work, hold, cut)
    assert ratios(figures)[0] < 1
    assert divided(figures) >= 1


def test_screw_chuck_of_the_worked_hold() -> None:
    # an 8 × 25 mm screw behind a 60 mm face, on work of 120 mm where that face is the advised one
    figures = judged("screw-chuck", {**BOWL, "diameter": 120.0, "length": 75.0}, {}, SHAPING)
    assert figures.sizes == pytest.approx({"face": 60.0, "diameter": 8.0, "length": 25.0})
    assert ratios(figures)[0] * 120 / (6 * INCH) >= 1


@pytest.mark.parametrize(
    ("method", "work", "hold", "cut"),
    [
        ("double-sided-tape", BOWL, {}, {"operation": "hollowing"}),
        ("jaws-on-tenon", BOWL, {"tenon": {"diameter": 30.0}}, {"operation": "hollowing"}),
        ("cup-drive", {**ROD, "diameter": 150.0, "form": "square", "state": "not-round"}, {}, {}),
        ("rubber-button-jaws", BOWL, {}, {"operation": "roughing"}),
        ("jam-chuck", {**BOWL, "diameter": 300.0}, {}, {"operation": "hollowing"}),
    ],
)
def test_traps_are_not_enough(method: str, work: Section, hold: Section, cut: Section) -> None:
    assert divided(judged(method, work, hold, cut)) < 1


def test_drive_without_its_tail_stands_nothing() -> None:
    figures = judged("spur-drive", ROD, {}, {"operation": "hollowing"})
    assert not figures.tail_up
    assert ratios(figures) == (0.0, 0.0)


@pytest.mark.parametrize("kind", [kind for kind in get_args(GlueKind) if kind != "other"])
def test_every_glue_a_case_may_name_has_its_strength(kind: str) -> None:
    weakest_block, tape = adhesive("hot-melt"), adhesive("tape")
    named = adhesive(kind)
    assert named in (weakest_block, tape) or named.shear.low > weakest_block.shear.low
    assert adhesive("other") == weakest_block


def test_uncured_glue_stands_nothing() -> None:
    assert ratios(judged("glue-block", BOWL, {"glue": {"kind": "epoxy", "cured": False}})) == (0.0, 0.0)


@pytest.mark.parametrize("method", ["toothed-ring-drive", "cup-drive", "mandrel", "friction-block", "sphere-cups"])
def test_a_carriage_tool_gets_no_forgiving_slip(method: str) -> None:
    by_hand = judged(method, ROD, {}, {"operation": "shaping", "force": 20.0})
    by_carriage = judged(method, ROD, {}, {"operation": "shaping", "force": 20.0, "tool": "carriage"})
    assert (by_hand.slips, by_hand.peak, by_hand.divisor) == (True, 1.0, 1.5)
    assert (by_carriage.slips, by_carriage.peak, by_carriage.divisor) == (False, 1.5, 2.5)


@pytest.mark.parametrize(
    ("work", "hold", "method", "factor"),
    [
        (ROD, {}, "collet", 1.5),
        (BOWL, {}, "jaws-on-tenon", 2.0),
        (SQUARE, {}, "spur-drive", 2.0),
        (SQUARE, {}, "long-jaws", 3.0),
        ({**BOWL, "condition": ["live-edge"]}, {}, "faceplate-screws", 3.0),
        ({**BOWL, "state": "finished", "condition": ["live-edge"]}, {}, "jam-chuck", 1.5),
        (ROD, {"tail": {"kind": "none"}}, "collet", 1.875),
        (ROD, {"tail": {"kind": "none"}, "steady": {"position": 60.0}}, "collet", 1.5),
        (ROD, {"tail": {"kind": "none"}, "overhang": 30.0}, "collet", 1.5),
    ],
)
def test_peaks(work: Section, hold: Section, method: str, factor: float) -> None:
    assert judged(method, work, hold).peak == factor


@pytest.mark.parametrize(
    ("hold", "operation", "machine", "method", "up"),
    [
        ({}, "shaping", {}, "jaws-on-tenon", True),
        ({}, "hollowing", {}, "jaws-on-tenon", False),
        ({}, "parting", {}, "jaws-on-tenon", False),
        ({}, "drilling", {}, "jaws-on-tenon", False),
        ({"tail": {"kind": "none"}}, "shaping", {}, "jaws-on-tenon", False),
        ({}, "shaping", {"tailstock": False}, "jaws-on-tenon", False),
        ({}, "shaping", {}, "ring-clamp-plate", False),
    ],
)
def test_where_the_tail_stands(hold: Section, operation: str, machine: Section, method: str, up: bool) -> None:
    assert judged(method, BOWL, hold, {"operation": operation}, **machine).tail_up is up


def test_drilling_asks_for_torque_alone() -> None:
    figures = judged("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, {"operation": "drilling"})
    assert [margin.name for margin in figures.margins] == ["torque"]
    # 5 N·m for a 50 mm bit in side grain, by density
    assert figures.margins[0].need == pytest.approx(5 * 705 / 650, rel=0.02)


def test_hold_speed_is_where_the_typical_capacity_just_stands() -> None:
    heavy = {**BOWL, "mass": 6.0, "offset": 10.0}
    tenon: Section = {"tenon": {"diameter": 100.0}}
    situation = job(heavy, tenon, {"operation": "hollowing"})
    highest = hold_speed(situation, "jaws-on-tenon")
    assert highest is not None
    assert divided(hold_figures(situation, "jaws-on-tenon", highest)) == pytest.approx(1.0)
    assert divided(hold_figures(situation, "jaws-on-tenon", highest * 1.01)) < 1


def test_no_hold_speed_where_speed_does_not_matter_or_it_fails_at_rest() -> None:
    assert hold_speed(job(BOWL), "jaws-on-tenon") is None
    small: Section = {"tenon": {"diameter": 30.0}}
    assert hold_speed(job(BOWL, small, {"operation": "hollowing"}), "jaws-on-tenon") is None
    assert hold_speed(job(BOWL, {}, {"operation": "hollowing"}), "pin-chuck") is None


def test_a_steady_takes_the_tipping() -> None:
    long = {**ROD, "diameter": 60.0, "length": 400.0}
    figures = judged("jaws-on-tenon", long, {"tenon": {"diameter": 40.0}}, {"operation": "hollowing"})
    assert divided(figures) < 1
    assert figures.steady_typical is not None
    assert figures.steady_typical / figures.steady_divisor > divided(figures)
    squared = judged("jaws-on-tenon", {**long, "form": "square"}, {}, {"operation": "hollowing"})
    assert squared.steady_typical is None
    kit = judged("jaws-on-tenon", long, {"kit": ["jaws-on-tenon"]}, {"operation": "hollowing"})
    assert kit.steady_typical is None


def test_screw_group_of_the_worked_plate() -> None:
    # four No. 10 × 25 in gravity 0.6 at 20, 60, 60 and 100 mm from the edge: 828 N·m
    assert group_moment(withdrawal=4705.0, count=4, circle=80.0, plate=120.0) == pytest.approx(828, rel=0.003)


@pytest.mark.parametrize(
    ("group", "gravity", "published"),
    [("hardwood", 0.40, 23.17), ("hardwood", 0.63, 44.13), ("softwood", 0.45, 29.79), ("softwood", 0.50, 36.40)],
)
def test_side_load_of_screws_as_published(group: str, gravity: float, published: float) -> None:
    # Wood Handbook FPL-GTR-282 (2021), Table 8-4
    assert lateral_constant(group, gravity) == published


def test_suction_that_cracks_a_thin_floor() -> None:
    # 80 kPa over a radius of 75 mm on 4 mm: 34.8 MPa with Poisson's ratio 0.3
    vacuum: Section = {"vacuum": {"gauge": 80.0, "seal_diameter": 150.0}}
    figures = judged("vacuum", {**BOWL, "state": "finished", "floor": 4.0}, vacuum, FINISHING)
    floor = next(margin for margin in figures.margins if margin.name == "floor")
    assert floor.need == pytest.approx(34.8, rel=0.003)
    assert divided(figures) == pytest.approx(floor.ratio)
    assert divided(figures) < 1


def test_material_nobody_can_name_gives_no_numbers_and_says_so() -> None:
    figures = judged("jaws-on-tenon", {"material": "mystery lump", "diameter": 80.0, "length": 40.0})
    assert figures.typical is None
    assert figures.missing
