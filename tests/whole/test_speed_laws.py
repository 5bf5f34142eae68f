"""Laws that speak of speed through the whole answer: what gets harder never runs faster, and nothing jumps."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.conftest import scale
from tests.whole.answers import of
from tests.whole.test_monotone import Law, ceiling, check, rpm_limit

TENON = "hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; work.state=round"
PLATE = "hold.method=faceplate-screws; cut.operation=hollowing; work.state=round"
LAWS = {
    "more thrust whips no later": Law(
        "NARROW; cut.force={x}N", "NARROW; cut.force={y}N", (rpm_limit("whirl"), ceiling), 5, 45
    ),
    "without the steady nothing rises": Law(
        "NARROW; hold.steady.position={x}mm", "NARROW", (rpm_limit("whirl"), ceiling), 20, 580
    ),
    "a thinner place whips no later": Law(
        "NARROW; work.thinnest_diameter={y}mm",
        "NARROW; work.thinnest_diameter={x}mm",
        (rpm_limit("whirl"), ceiling),
        8,
        24,
    ),
    "fibers that lean more whip no later": Law(
        "NARROW; work.grain_slope=1:{y}", "NARROW; work.grain_slope=1:{x}", (rpm_limit("whirl"), ceiling), 2, 60
    ),
    "a bowed bar whips sooner": Law("NARROW", "NARROW; work.condition=[bowed]", (rpm_limit("whirl"), ceiling), 1, 2),
    "a bar further out behind the spindle whips sooner": Law(
        "ROD; hold.method=through-spindle; hold.rear_overhang={x}mm",
        "ROD; hold.method=through-spindle; hold.rear_overhang={y}mm",
        (rpm_limit("rear-overhang"), ceiling),
        80,
        900,
    ),
    "less grip is lost sooner": Law(
        f"BOWL; {TENON}; hold.chuck.grip={{y}}N",
        f"BOWL; {TENON}; hold.chuck.grip={{x}}N",
        (rpm_limit("jaws-at-speed"), ceiling),
        500,
        20000,
    ),
    "a heavier cut leaves the jaws less": Law(
        f"BOWL; {TENON}; cut.force={{x}}N",
        f"BOWL; {TENON}; cut.force={{y}}N",
        (rpm_limit("jaws-at-speed"), ceiling),
        5,
        500,
    ),
    "a thinner wall round a recess runs no faster": Law(
        "PLATTER; hold.recess.wall={y}mm",
        "PLATTER; hold.recess.wall={x}mm",
        (rpm_limit("jaws-at-speed"), ceiling),
        4,
        90,
    ),
    "more offset lets a plate go no later": Law(
        f"BOWL; {PLATE}; work.offset={{x}}mm",
        f"BOWL; {PLATE}; work.offset={{y}}mm",
        (rpm_limit("hold"), rpm_limit("walking"), ceiling),
        0.5,
        30,
    ),
    "a free lathe walks before a bolted one": Law(
        "BOWL; machine.bolted_down=yes; machine.mass={x}kg",
        "BOWL; machine.bolted_down=no; machine.mass={x}kg",
        (rpm_limit("walking"), ceiling),
        30,
        900,
    ),
    "a narrower base tips sooner": Law(
        "BOWL; machine.base_width={y}mm", "BOWL; machine.base_width={x}mm", (rpm_limit("walking"), ceiling), 200, 1500
    ),
    "a higher spindle tips sooner": Law(
        "BOWL; machine.spindle_height={x}mm",
        "BOWL; machine.spindle_height={y}mm",
        (rpm_limit("walking"), ceiling),
        500,
        1500,
    ),
    "a larger drill turns slower": Law(
        "HOLLOW; cut.operation=drilling; cut.drill_diameter={x}mm",
        "HOLLOW; cut.operation=drilling; cut.drill_diameter={y}mm",
        (rpm_limit("operation"), ceiling),
        6,
        80,
    ),
    "rot runs no faster": Law("BOWL", "BOWL; work.condition=[rot]", (ceiling, rpm_limit("rim-speed")), 1, 2),
    "a knot runs no faster": Law("BOWL", "BOWL; work.condition=[knot]", (ceiling, rpm_limit("burst")), 1, 2),
    "one wet side runs no faster": Law(
        "BOWL; work.one_side_wet=no", "BOWL; work.one_side_wet=yes", (ceiling, rpm_limit("walking")), 1, 2
    ),
    "a lower mark on the chuck runs no faster": Law(
        f"BOWL; {TENON}; hold.chuck.max_rpm={{y}}",
        f"BOWL; {TENON}; hold.chuck.max_rpm={{x}}",
        (rpm_limit("device-mark"), ceiling),
        100,
        3000,
    ),
}
# Inputs that may be one percent more; ceilings move by less than five.
SMOOTH = {
    "offset": ("BOWL; machine.min_rpm=; work.offset={}mm", 0.3, 30),
    "mass": ("BOWL; machine.min_rpm=; work.offset=5mm; work.mass={}kg", 1, 19),
    "one radius": ("BOWL; work.radii=[{}mm, 124mm, 127mm, 124mm, 120mm, 116mm, 113mm, 116mm]", 80, 130),
    "axis of a half-log": ("SPINDLE; work.form=half-log; work.axis_from_flat={}mm; machine.min_rpm=", 2, 37),
    "mass of the lathe": ("BOWL; machine.min_rpm=; machine.mass={}kg", 30, 900),
    "base": ("BOWL; machine.min_rpm=; work.offset=6mm; machine.base_width={}mm", 250, 1200),
    "spindle height": ("BOWL; machine.min_rpm=; work.offset=6mm; machine.spindle_height={}mm", 700, 1400),
    "length": ("NARROW; work.length={}mm", 250, 1200),
    "thinnest": ("NARROW; work.thinnest_diameter={}mm", 10, 24.7),
    "steady": ("NARROW; work.thinnest_diameter=12mm; hold.steady.position={}mm", 30, 570),
    "slope of the grain": ("NARROW; work.grain_slope=1:{}", 2, 60),
    "cutting force": ("NARROW; cut.force={}N", 5, 45),
    "grip": (f"BOWL; {TENON}; work.diameter=100mm; hold.chuck.grip={{}}N", 500, 20000),
    "overhang": ("HOLLOW; work.offset=2mm; machine.mass=900kg; hold.overhang={}mm", 40, 200),
    "dead center": ("SPINDLE; work.state=round; hold.tail.kind=dead-point; cut.force={}N", 20, 120),
    "crack": ("BOWL; work.condition=[crack]; work.crack.across={}mm", 2, 80),
}
FEW = settings(max_examples=2)


@pytest.mark.parametrize("name", LAWS)
@FEW
@given(data=st.data())
def test_what_gets_harder_never_runs_faster(name: str, data: st.DataObject) -> None:
    draw_and_check(LAWS[name], data)


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("name", LAWS)
@settings(max_examples=scale(1000))
@given(data=st.data())
def test_the_same_many_times(name: str, data: st.DataObject) -> None:
    draw_and_check(LAWS[name], data)


def draw_and_check(law: Law, data: st.DataObject) -> None:
    less = data.draw(st.floats(law.low, law.high * 0.98), label="less")
    more = data.draw(st.floats(min(less * 1.01, law.high), law.high), label="more")
    check(law, less, more)


@pytest.mark.parametrize("name", LAWS)
def test_each_law_speaks_of_limits_that_are_there(name: str) -> None:
    law = LAWS[name]
    found = of(law.before.format(x=f"{law.low:.4f}", y=f"{law.high:.4f}"))
    assert all(pick(found) is not None for pick in law.never_rises)


@pytest.mark.parametrize("name", SMOOTH)
@FEW
@given(share=st.floats(0, 1))
def test_one_percent_more_never_moves_the_ceiling_by_five(name: str, share: float) -> None:
    jump(name, share)


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("name", SMOOTH)
@settings(max_examples=scale(500))
@given(share=st.floats(0, 1))
def test_no_jump_many_times(name: str, share: float) -> None:
    jump(name, share)


def window(answer: dict[str, Any]) -> bool:
    """Whether there is a thrust to set."""
    return (answer["thrust"] or {}).get("window") not in (None, "empty")


def jump(name: str, share: float) -> None:
    text, low, high = SMOOTH[name]
    value = low * (high / low) ** share
    now, more = of(text.format(f"{value:.6f}")), of(text.format(f"{value * 1.01:.6f}"))
    # Printed borders: the verdict on the hold, and a window that closes: no thrust is set then.
    same = now["holding"][0]["verdict"] == more["holding"][0]["verdict"] and window(now) == window(more)
    if same and "do-not-mount" not in (now["verdict"], more["verdict"]):
        assert ceiling(more) == pytest.approx(ceiling(now), rel=0.05)


@pytest.mark.parametrize("text", ["BOWL", "SPINDLE", "NARROW", "PLATTER"])
def test_the_kind_of_lathe_alone_changes_no_limit(text: str) -> None:
    wood, metal = (of(f"{text}; machine.kind={kind}-lathe")["speed"]["limits"] for kind in ("wood", "metal"))
    assert [(entry["name"], entry["rpm"]) for entry in wood] == [(entry["name"], entry["rpm"]) for entry in metal]


SILENT = {
    "hold.chuck.grip": "hold.chuck.grip=9kN",
    "machine.base_width": "machine.base_width=900mm",
    "machine.spindle_height": "machine.spindle_height=900mm",
    "machine.bolted_down": "machine.bolted_down=yes",
    "cut.drill_diameter": "cut.drill_diameter=10mm",
}


@pytest.mark.parametrize("field", SILENT)
def test_what_nobody_says_never_runs_faster_than_good_news(field: str) -> None:
    base = f"BOWL; {TENON}; work.offset=5mm; cut.operation={'drilling' if 'drill' in field else 'shaping'}"
    known, silent = of(f"{base}; {SILENT[field]}"), of(f"{base}; {field}=")
    assert ceiling(silent) <= ceiling(known) * 1.000001
    assert field in {entry["field"] for entry in silent["assumed"]}
