"""What may never happen whatever the numbers: a weaker hold that looks better, a silence that helps."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.reckoning.holds import METHODS, HoldFigures, hold_fact, hold_figures, reach_values
from tests.reckoning.holds.hold_bench import BOWL, ROD, START_RPM, Section, job, judged, ratios

FEW = settings(max_examples=25, deadline=None)
AWAY: Section = {"tail": {"kind": "none"}}
CUT: Section = {"operation": "shaping", "force": 60.0}
LEVERED = ("jaws-on-tenon", "jaws-in-recess", "faceplate-screws", "screw-chuck", "glue-block", "vacuum", "soft-jaws")
ALLOWANCE = 1 + 1e-9


def never_better(worse: HoldFigures, better: HoldFigures) -> None:
    for weak, strong in zip(ratios(worse), ratios(better), strict=True):
        assert weak <= strong * ALLOWANCE


@FEW
@given(st.sampled_from(LEVERED), st.floats(20, 300), st.floats(1.0, 3.0))
def test_longer_overhang_never_better(method: str, reach: float, more: float) -> None:
    near = judged(method, BOWL, {**AWAY, "overhang": reach}, CUT)
    never_better(judged(method, BOWL, {**AWAY, "overhang": reach * more}, CUT), near)


@FEW
@given(st.sampled_from(LEVERED), st.floats(0, 3000), st.floats(0, 2000))
def test_faster_never_better(method: str, rpm: float, more: float) -> None:
    situation = job({**BOWL, "offset": 5.0}, AWAY, CUT)
    never_better(hold_figures(situation, method, rpm + more), hold_figures(situation, method, rpm))


@FEW
@given(st.floats(30, 150), st.floats(1, 1.5), st.floats(5, 15), st.floats(1, 2))
def test_larger_tenon_never_worse(diameter: float, wider: float, length: float, longer: float) -> None:
    small = judged("jaws-on-tenon", BOWL, {**AWAY, "tenon": {"diameter": diameter, "length": length}}, CUT)
    large: Section = {"diameter": diameter * wider, "length": length * longer}
    never_better(small, judged("jaws-on-tenon", BOWL, {**AWAY, "tenon": large}, CUT))


@FEW
@given(st.floats(500, 20000), st.floats(1, 3))
def test_larger_grip_never_worse(grip: float, more: float) -> None:
    weak = judged("jaws-on-tenon", BOWL, {**AWAY, "chuck": {"grip": grip}}, CUT)
    never_better(weak, judged("jaws-on-tenon", BOWL, {**AWAY, "chuck": {"grip": grip * more}}, CUT))


@FEW
@given(st.floats(60, 100), st.floats(0, 40))
def test_tenon_off_the_jaw_circle_never_better(circle: float, off: float) -> None:
    def on(diameter: float) -> HoldFigures:
        chuck: Section = {"jaw_circle": diameter, "grip": 20000.0}
        return judged("jaws-on-tenon", BOWL, {"tenon": {"diameter": circle, "length": 8.0}, "chuck": chuck}, CUT)

    never_better(on(circle + off), on(circle))


@FEW
@given(st.floats(1, 60), st.floats(1, 2))
def test_thicker_wall_of_a_recess_never_worse(wall: float, more: float) -> None:
    thin = judged("jaws-in-recess", BOWL, {**AWAY, "recess": {"diameter": 75.0, "wall": wall}}, CUT)
    thick = judged("jaws-in-recess", BOWL, {**AWAY, "recess": {"diameter": 75.0, "wall": wall * more}}, CUT)
    never_better(thin, thick)


@FEW
@given(st.floats(0, 4000), st.floats(0, 2000), st.floats(50, 165), st.floats(1, 1.5))
def test_altitude_and_small_seal_never_better(height: float, higher: float, seal: float, wider: float) -> None:
    def on(altitude: float, diameter: float) -> HoldFigures:
        return judged("vacuum", BOWL, {**AWAY, "vacuum": {"seal_diameter": diameter}}, CUT, altitude=altitude)

    never_better(on(height + higher, seal), on(height, seal))
    never_better(on(height, seal), on(height, seal * wider))


@FEW
@given(
    st.sampled_from(["count", "diameter", "length"]), st.integers(1, 7), st.floats(3, 8), st.floats(10, 40)
)
def test_fewer_shorter_thinner_screws_never_better(changed: str, count: int, diameter: float, length: float) -> None:
    def on(**screws: Any) -> HoldFigures:
        return judged("faceplate-screws", BOWL, {**AWAY, "method": "faceplate-screws", "screws": screws}, CUT)

    given_: dict[str, Any] = {"count": count, "diameter": diameter, "length": length, "circle": 80.0}
    more = {**given_, changed: given_[changed] + 1}
    never_better(on(**given_), on(**more))


@pytest.mark.parametrize("method", ["faceplate-screws", "screw-chuck", "glue-block", "paper-joint"])
def test_end_grain_never_better(method: str) -> None:
    hold: Section = {**AWAY, "screws": {"diameter": 5.0, "length": 30.0, "count": 1 if method == "screw-chuck" else 4}}
    side = {**BOWL, "purpose": "other", "diameter": 100.0, "length": 80.0}
    end = {**side, "grain": "along", "form": "round"}
    never_better(judged(method, end, hold, CUT), judged(method, side, hold, CUT))


@FEW
@given(st.sampled_from(["pva", "epoxy", "polyurethane", "hot-melt"]), st.floats(40, 200))
def test_green_wood_never_raises_a_glue_hold(kind: str, diameter: float) -> None:
    glue: Section = {**AWAY, "glue": {"kind": kind, "diameter": diameter, "cured": True}}
    never_better(judged("glue-block", {**BOWL, "moisture": "green"}, glue, CUT), judged("glue-block", BOWL, glue, CUT))


FAULTS = ["knot", "pith", "check", "crack", "punky", "rot", "spalted", "reaction-wood"]


@FEW
@given(st.sampled_from(METHODS), st.sampled_from(FAULTS))
def test_a_fault_never_helps(method: str, fault: str) -> None:
    sound = judged(method, BOWL, {}, CUT)
    faulty = judged(method, {**BOWL, "condition": [fault]}, {}, CUT)
    if sound.typical is not None:
        # teeth may be seated deeper to make up for soft wood; what they may be seated to at most is not
        if method in ("spur-drive", "two-spur-drive"):
            deep: Section = {"drive": {"seated_depth": 2.0}}
            sound = judged(method, BOWL, deep, CUT)
            faulty = judged(method, {**BOWL, "condition": [fault]}, deep, CUT)
        never_better(faulty, sound)


SILENCES: list[tuple[str, Section, Section]] = [
    ("jaws-in-recess", {**BOWL, "floor": 12.0}, {}),
    ("glue-block", BOWL, {"glue": {"kind": "pva"}}),
    ("glue-block", BOWL, {"glue": {"kind": "epoxy"}}),
    ("vacuum", BOWL, {"vacuum": {"gauge": 80.0}}),
    ("jaws-on-tenon", BOWL, {"chuck": {"grip": 8000.0}}),
    ("jaws-on-tenon", BOWL, {"overhang": 60.0}),
    ("spur-drive", ROD, {"drive": {"seated_depth": 6.0}}),
]


@pytest.mark.parametrize(("method", "work", "hold"), SILENCES)
def test_a_silence_never_helps(method: str, work: Section, hold: Section) -> None:
    told = judged(method, work, hold, CUT)
    silent = judged(method, {key: value for key, value in work.items() if key != "floor"}, {}, CUT)
    never_better(silent, told)


@pytest.mark.parametrize("method", METHODS)
def test_advised_sizes_are_told_as_assumed(method: str) -> None:
    figures = judged(method, BOWL, {}, CUT)
    fields = [entry.field for entry in figures.assumed]
    assert len(fields) == len(set(fields))
    assert all(math.isfinite(value) and value > 0 for value in figures.sizes.values())
    if figures.typical is not None and figures.sizes:
        assert fields


@pytest.mark.parametrize("method", METHODS)
@pytest.mark.parametrize("material", ["acetal", "sugar maple"])
def test_facts_are_flat_words_and_finite_numbers(method: str, material: str) -> None:
    situation = job({**BOWL, "material": material}, {}, CUT)
    values = hold_fact(situation, hold_figures(situation, method, START_RPM), chosen=True, named=False)
    for value in (*values.values(), *reach_values(situation).values()):
        assert isinstance(value, str | int | float)
        assert isinstance(value, str) or math.isfinite(value)
    assert values["method"] == method
    assert values["named"] == "yes"
    assert values["marks"] == "gone"
    assert (values["model"] == "yes") == ("typical" in values)


def test_facts_of_a_tenon() -> None:
    situation = job(BOWL, {"tenon": {"diameter": 75.0, "length": 10.0}, "chuck": {"jaw_depth": 12.0}}, CUT)
    values = hold_fact(situation, hold_figures(situation, "jaws-on-tenon", 600.0), chosen=False, named=True)
    numbers = {
        "size_share": 75 / 254,
        "overhang_ratio": 100 / 75,
        "depth_share": 10.0 / 12.0,
    }
    assert {key: values[key] for key in numbers} == pytest.approx(numbers)
    assert (values["given"], values["group"], values["tail"], values["named"]) == ("yes", "jawed", "up", "yes")


def test_margins_are_typical_capacity_over_the_divisor() -> None:
    figures = judged("jaws-on-tenon", BOWL, AWAY, CUT)
    used = sum(1 / margin.ratio for margin in figures.margins)
    assert figures.divided == pytest.approx(1 / used)
    for margin in figures.margins:
        assert margin.ratio == pytest.approx(margin.have / margin.need)
