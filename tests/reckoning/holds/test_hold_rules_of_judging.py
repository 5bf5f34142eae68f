"""The lesser rules of judging, each worked by hand: air, end grain, wet wood, feet, catches, motors, measured slip."""

from __future__ import annotations

import math

import pytest

from tests.reckoning.holds.hold_bench import BOWL, ROD, START_RPM, Section, job, judged, ratios

CUT: Section = {"operation": "shaping", "force": 100.0}
FIRST: Section = {"operation": "finishing", "force": 25.0}
AXLE: Section = {**ROD, "diameter": 100.0, "length": 200.0}
CUP_TAIL: Section = {"tail": {"kind": "live-cup"}}


def torque_of(work: Section, method: str, hold: Section, cut: Section = CUT) -> tuple[float, float]:
    """Low and typical torque in N·m: the ratios times what is asked."""
    figures = judged(method, work, hold, cut)
    asked = next(margin.need for margin in figures.margins if margin.name == "torque")
    low, typical = ratios(figures)
    return low * asked, typical * asked


def test_thin_air_caps_the_pump() -> None:
    # ISO 2533: 54.0 kPa at 5000 m, of which a pump reaches 0.85; at sea level the assumed 50 kPa stand
    assert judged("vacuum", BOWL, {}, FIRST, altitude=0.0).typical == pytest.approx(
        judged("vacuum", BOWL, {}, FIRST).typical
    )
    high = judged("vacuum", BOWL, {}, FIRST, altitude=5000.0)
    assert ratios(high)[1] / ratios(judged("vacuum", BOWL, {}, FIRST))[1] == pytest.approx(0.85 * 54.02 / 50, rel=1e-3)


def test_a_gauge_never_reads_more_than_the_air() -> None:
    told: Section = {"vacuum": {"gauge": 95.0}}
    # ISO 2533: 84.6 kPa at 1500 m
    high = ratios(judged("vacuum", BOWL, told, FIRST, altitude=1500.0))[1]
    assert high / ratios(judged("vacuum", BOWL, {}, FIRST))[1] == pytest.approx(84.56 / 50, rel=1e-3)


def test_glue_on_end_grain_is_a_quarter() -> None:
    glue: Section = {"glue": {"kind": "pva", "diameter": 60.0, "cured": True}}
    low, typical = torque_of(AXLE, "glue-block", glue)
    assert low == pytest.approx(math.pi * 0.25 * 0.7 * 4 * 60**3 / 16e3)
    assert typical == pytest.approx(math.pi * 0.25 * 0.7 * 10 * 60**3 / 16e3)


def test_the_wood_gives_before_a_strong_glue() -> None:
    pine: Section = {**BOWL, "material": "eastern white pine", "condition": ["spalted"]}
    glue: Section = {"glue": {"kind": "pva", "diameter": 75.0, "cured": True}}
    wood = job(pine).wood
    assert wood is not None
    shear = 0.7 * 0.3 * wood.shear.typical
    assert shear < 0.7 * 10
    assert torque_of(pine, "glue-block", glue)[1] == pytest.approx(math.pi * shear * 75**3 / 16e3)


@pytest.mark.parametrize("work", [{**BOWL, "condition": ["oily"]}, {**BOWL, "moisture": "green"}])
def test_wet_or_oily_wood_slips_sooner(work: Section) -> None:
    low, typical = torque_of(work, "jaws-on-tenon", {"tenon": {"diameter": 75.0}})
    assert low == pytest.approx(0.15 * 3000 * 0.0375)
    assert typical == pytest.approx(0.30 * 6000 * 0.0375)


def test_a_finished_foot_leaves_twenty_millimeters_of_wall() -> None:
    recess: Section = {"recess": {"diameter": 75.0, "depth": 4.0}}
    figures = judged("jaws-in-recess", {**BOWL, "state": "finished"}, recess, FIRST)
    assert figures.sizes["wall"] == pytest.approx(20.0)
    assert judged("jaws-in-recess", BOWL, recess, FIRST).sizes["wall"] == pytest.approx((254 - 75) / 2)


def test_a_surface_that_stays_is_squeezed_less() -> None:
    rod: Section = {**ROD, "diameter": 40.0}
    grip: Section = {"chuck": {"grip": 60000.0}}
    gone = torque_of(rod, "soft-jaws", grip)
    kept = torque_of({**rod, "state": "finished"}, "soft-jaws", grip)
    assert gone[1] == pytest.approx(1.5 * kept[1])


def test_a_hard_catch() -> None:
    figures = judged("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, CUT)
    # 1 kN at the rim against 0.35 · 6 kN at the tenon
    assert figures.catch == pytest.approx(1000 * 0.127 / (0.35 * 6000 * 0.0375))
    weak = judged("jaws-on-tenon", BOWL, {"tenon": {"diameter": 75.0}}, CUT, power=200.0)
    stalls = 1.5 * 200 / (2 * math.pi * START_RPM / 60)
    assert weak.catch == pytest.approx(stalls / (0.35 * 6000 * 0.0375))


def test_a_small_motor_stalls_before_the_teeth_are_asked_for_more() -> None:
    figures = judged("spur-drive", {**ROD, "diameter": 76.0}, {}, {**CUT, "force": 500.0}, power=100.0)
    assert figures.margins[0].need == pytest.approx(1.5 * 100 / (2 * math.pi * START_RPM / 60))


def test_a_soft_or_checked_end_grips_half_as_well() -> None:
    sound = torque_of(AXLE, "cup-drive", CUP_TAIL)
    checked = torque_of({**AXLE, "condition": ["check"]}, "cup-drive", CUP_TAIL)
    assert checked[1] == pytest.approx(sound[1] / 2)


def test_a_measured_slip_replaces_the_table() -> None:
    hold: Section = {**CUP_TAIL, "slip_test": {"torque": 6.0, "thrust": 900.0}}
    low, typical = torque_of(AXLE, "cup-drive", hold)
    # slips at 6 N·m under 900 N, judged at 600 N
    assert typical == pytest.approx(6.0 * 600 / 900)
    assert low == pytest.approx(0.8 * typical)


def test_pressed_only_teeth_are_judged_by_thrust() -> None:
    drive: Section = {"teeth": 4, "outer_diameter": 25.0, "inner_diameter": 10.0, "seated_depth": 0.0}
    low, typical = torque_of(AXLE, "spur-drive", {**CUP_TAIL, "drive": drive})
    # 60° teeth: 0.20 at the low end, 0.35 for design, a tenth of the thrust on the point, 1 kN
    assert (low, typical) == pytest.approx((0.20 * 0.9 * 8.75, 0.35 * 0.9 * 8.75))


def test_ranges_of_screw_count_by_diameter() -> None:
    counts = {
        diameter: judged("faceplate-screws", {**BOWL, "diameter": diameter}).sizes["count"]
        for diameter in (200.0, 201.0, 300.0, 301.0)
    }
    assert counts == {200.0: 4, 201.0: 6, 300.0: 6, 301.0: 8}


def test_lag_screws_by_their_own_formula() -> None:
    lag: Section = {"count": 4, "diameter": 8.0, "length": 30.0, "circle": 80.0, "kind": "lag"}
    figures = judged("faceplate-screws", BOWL, {"screws": lag}, {**CUT, "operation": "hollowing"})
    pull = next(margin for margin in figures.margins if margin.name == "pull")
    assert pull.have * 3 == pytest.approx(4 * 125.4 * 0.63**1.5 * 8**0.75 * 30, rel=0.01)


def test_the_jaws_crush_what_they_cannot_hold() -> None:
    told: Section = {"tenon": {"diameter": 75.0, "length": 3.0}, "chuck": {"grip": 90000.0}}
    wood = job(BOWL).wood
    assert wood is not None
    crushes = 0.7 * math.pi * 75 * 3 * 1.5 * wood.perpendicular.typical
    assert torque_of(BOWL, "jaws-on-tenon", told)[1] == pytest.approx(0.35 * crushes * 0.0375)


def test_another_glue_is_taken_for_the_weakest_and_what_was_said_stands() -> None:
    told = [
        {entry.field: entry.value for entry in judged("glue-block", BOWL, hold).assumed}
        for hold in ({"glue": {"kind": "other"}}, {})
    ]
    assert told[0]["strength of the other glue"] == told[1]["hold.glue.kind"] == "hot-melt"
    assert "hold.glue.kind" not in told[0]
