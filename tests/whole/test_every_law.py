"""The laws that no answer may break, each many times through the whole program, in jobs drawn at random.

A law makes a job harder by one thing; what it names must not look better. One law has several ways to be drawn.
"""

from __future__ import annotations

import random
import re
from typing import Any, NamedTuple

import pytest

from tests.conftest import SEED, scale
from tests.whole.answers import of
from tests.whole.test_monotone import (
    Pick,
    allowed,
    ceiling,
    hold_low,
    hold_margin,
    mildness,
    rpm_limit,
    thrust_limit,
)

ROOM = 1e-9
FULL = 5000
QUICK = 1
WOODS = ("sugar maple", "American beech", "white oak", "black walnut", "black cherry", "ponderosa pine", "white ash")
TENON = "hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; hold.tenon.length=10mm"
OUT = "BOWL; work.state=round; cut.operation=hollowing"


def slip(found: dict[str, Any]) -> float | None:
    """Torque at which the drive surely lets go no sooner, turned about: what may not fall may not rise."""
    torque = found["thrust"].get("slip_nm")
    return None if torque is None else -float(torque[0])


def splits_at(found: dict[str, Any]) -> float | None:
    """The splitting limit, turned about."""
    value = thrust_limit("splitting")(found)
    return None if value is None else -float(value)


def needed(found: dict[str, Any]) -> float | None:
    """What the drive needs, turned about."""
    value = found["thrust"].get("needed_n")
    return None if value is None else -float(value)


def margin(found: dict[str, Any]) -> float | None:
    """Thrust allowed over thrust set."""
    part = found["thrust"]
    return part["allowed_n"] / part["set_n"] if "set_n" in part else None


class Way(NamedTuple):
    """From `easy` to `hard` nothing in `never` may rise; {x} < {y} are drawn between the ends."""

    easy: str
    hard: str
    never: tuple[Pick, ...]
    low: float = 1.0
    high: float = 2.0


def on(base: str, field: str, never: tuple[Pick, ...], low: float, high: float, worse: str = "xy") -> Way:
    """One field `name={}unit` from its easy to its hard value; `worse` "yx" where less is harder."""
    easy, hard = (f"{base}; {field.format('{' + letter + '}')}" for letter in worse)
    return Way(easy, hard, never, low, high)


RPM = (ceiling, rpm_limit("rim-speed"), rpm_limit("walking"), rpm_limit("burst"))
HOLD = (hold_margin, hold_low)
LOOSE = (ceiling, rpm_limit("walking"), rpm_limit("hold"))
ENDS = (allowed, thrust_limit("splitting"), thrust_limit("crushing"), thrust_limit("buckling"))
LAWS: dict[str, tuple[Way, ...]] = {
    "1 larger": (
        Way("BOWL; work.mass=4kg; work.offset=4mm; work.diameter={x}mm",
            "BOWL; work.mass=4kg; work.offset=4mm; work.diameter={y}mm", RPM[1:], 120, 400),
    ),
    "2 longer": (
        Way("NARROW; work.length={x}mm", "NARROW; work.length={y}mm", (rpm_limit("whirl"), thrust_limit("buckling")),
            300, 1200),
    ),
    "3 more thrust": (
        Way("NARROW; cut.force={x}N", "NARROW; cut.force={y}N", (rpm_limit("whirl"), slip), 5, 25),
    ),
    "4 more thrust, less margin": (Way("NARROW; cut.force={x}N", "NARROW; cut.force={y}N", (margin,), 5, 25),),
    "5 cracks": (
        Way("BOWL", "BOWL; work.condition=[crack]; work.crack.across={y}mm", (ceiling, *RPM[1:], mildness), 5, 200),
        on("BOWL; work.condition=[crack]", "work.crack.across={}mm", (ceiling, rpm_limit("crack"), mildness), 5, 200),
        Way("NARROW; work.condition=[check]; work.crack.along={x}mm",
            "NARROW; work.condition=[check]; work.crack.along={y}mm", ENDS, 1, 60),
    ),
    "6 less sound wood": tuple(
        Way(base, f"{base}; work.condition=[{fault}]", (*RPM, *ENDS, *HOLD, mildness))
        for base in ("BOWL; " + TENON, "NARROW") for fault in ("pith", "knot", "rot", "punky")
    ),
    "7 offset and mass": (
        on(f"{OUT}; {TENON}", "work.offset={}mm", LOOSE, 0.5, 25),
        on(f"{OUT}; {TENON}; work.offset=4mm", "work.mass={}kg", LOOSE, 1, 15),
    ),
    "8 friction": (
        Way("NARROW; hold.slip_test.torque={y}Nm; hold.slip_test.thrust=1000N",
            "NARROW; hold.slip_test.torque={x}Nm; hold.slip_test.thrust=1000N", (needed,), 1, 6),
        Way(f"{OUT}; {TENON}", f"{OUT}; {TENON}; work.condition=[oily]", HOLD),
    ),
    "9 what is known less well": (
        Way("BOWL; " + TENON, "BOWL; " + TENON + "; work.material=unknown", (rpm_limit("burst"), *HOLD)),
        Way("NARROW", "NARROW; work.material=unknown", (*ENDS, rpm_limit("whirl"))),
    ),
    "10 overhang": (
        Way(f"{OUT}; {TENON}; hold.overhang={{x}}mm", f"{OUT}; {TENON}; hold.overhang={{y}}mm", HOLD, 40, 250),
    ),
    "11 blunter": (
        Way("NARROW; hold.tail.point_angle={x}deg", "NARROW; hold.tail.point_angle={y}deg", (splits_at,), 45, 120),
    ),
    "12 grip and contact": (
        Way(f"{OUT}; hold.method=jaws-on-tenon; hold.tenon.length=10mm; hold.tenon.diameter={{y}}mm",
            f"{OUT}; hold.method=jaws-on-tenon; hold.tenon.length=10mm; hold.tenon.diameter={{x}}mm", HOLD, 30, 140),
        Way(f"{OUT}; {TENON}; hold.chuck.grip={{y}}N", f"{OUT}; {TENON}; hold.chuck.grip={{x}}N", HOLD, 500, 15000),
    ),
    "13 wall round a recess": (
        Way("PLATTER; hold.recess.wall={y}mm", "PLATTER; hold.recess.wall={x}mm", (*HOLD, mildness), 4, 90),
    ),
    "14 chips": (
        on(f"{OUT}; {TENON}; cut.tool=carriage", "cut.depth={}mm", HOLD, 0.1, 4),
        on(f"{OUT}; {TENON}; cut.tool=carriage", "cut.feed={}mm", HOLD, 0.05, 1.4),
    ),
    "16 suction": (
        on("BOWL; work.state=finished; hold.method=vacuum", "machine.altitude={}m", HOLD, 1, 4000),
        on("BOWL; work.state=finished; hold.method=vacuum", "hold.vacuum.gauge={}kPa", HOLD, 20, 90, "yx"),
        on("BOWL; work.state=finished; hold.method=vacuum", "hold.vacuum.seal_diameter={}mm", HOLD, 40, 200, "yx"),
    ),
    "17 screws": (
        on(f"{OUT}; hold.method=faceplate-screws", "hold.screws.length={}mm", HOLD, 8, 45, "yx"),
        on(f"{OUT}; hold.method=faceplate-screws", "hold.screws.diameter={}mm", HOLD, 3, 8, "yx"),
        Way(f"{OUT}; hold.method=faceplate-screws; hold.screws.count=8",
            f"{OUT}; hold.method=faceplate-screws; hold.screws.count=4", HOLD),
        Way(f"{OUT}; hold.method=faceplate-screws", f"{OUT}; hold.method=faceplate-screws; work.grain=along", HOLD),
    ),
    "18 green under glue": (
        Way(f"{OUT}; hold.method=glue-block; hold.glue.kind=polyurethane",
            f"{OUT}; hold.method=glue-block; hold.glue.kind=polyurethane; work.moisture=green", (*HOLD, mildness)),
    ),
    "19 less support": (
        Way(f"BOWL; {TENON}; hold.tail.kind=live-cup", f"BOWL; {TENON}; hold.tail.kind=none", (*HOLD, ceiling)),
        Way("NARROW; hold.steady.position=300mm", "NARROW", (rpm_limit("whirl"), thrust_limit("buckling"))),
    ),
    "20 lighter lathe": (
        Way("BOWL; machine.mass={y}kg", "BOWL; machine.mass={x}kg", (ceiling, rpm_limit("walking")), 30, 900),
        Way("BOWL; machine.bolted_down=yes", "BOWL", (rpm_limit("walking"),)),
    ),
    "21 larger divisor": (
        Way("SPINDLE; cut.force=20N", "SPINDLE; cut.force=20N; cut.tool=carriage", (hold_margin, needed)),
        Way("NARROW", "NARROW; work.condition=[check]", (thrust_limit("splitting"), allowed)),
    ),
    "22 silence": (
        Way("BOWL; machine.mass={y}kg", "BOWL; machine.mass=", (ceiling,), 80, 900),
        Way("BOWL; work.offset=0.5mm", "BOWL", (ceiling,)),
        Way(f"{OUT}; {TENON}; hold.chuck.grip={{y}}N", f"{OUT}; {TENON}", (hold_low,), 4000, 20000),
    ),
    "23 wetter": (
        Way("NARROW; work.moisture={x}%", "NARROW; work.moisture={y}%",
            (thrust_limit("crushing"), thrust_limit("buckling"), rpm_limit("whirl")), 12, 60),
    ),
}  # fmt: skip
ONLY_A_FIGURE = {"15 sharper": "no field of a case says how sharp the tool is; tests/physics/test_monotone.py has it"}


KIT = {"BOWL": "jaws-on-tenon", "PLATTER": "jaws-in-recess"}


def kit(text: str) -> str:
    """The one way of holding there is: the others are judged elsewhere, and would take most of the time."""
    named = re.search(r"hold\.method=([\w-]+)", text)
    return f"; hold.kit=[{named[1] if named else KIT.get(text.partition(';')[0], 'spur-drive')}]"


def drawn(dice: random.Random, way: Way) -> tuple[str, str]:
    """The two jobs of one draw: the same wood and lathe, and two values for what gets harder."""
    less = dice.uniform(way.low, way.high)
    more = dice.uniform(less, way.high)
    stand = dice.choice(("ordinary", "light"))
    words = f"; work.material={dice.choice(WOODS)}; machine.min_rpm=; machine.stand={stand}"
    found = []
    for text in (way.easy, way.hard):
        base, _, rest = text.format(x=f"{less:.6f}", y=f"{more:.6f}").partition(";")
        found.append((f"{base}{words}; {rest}" if rest.strip() else f"{base}{words}") + kit(text))
    return found[0], found[1]


def hold_to(name: str, count: int, seed: int) -> None:
    """Draw the law that often. At least half of the draws must have compared something."""
    dice, compared = random.Random(f"{seed} {name}"), 0
    for _ in range(count):
        way = dice.choice(LAWS[name])
        easy, hard = drawn(dice, way)
        before, after = of(easy), of(hard)
        looked = False
        for pick in way.never:
            was, now = pick(before), pick(after)
            if was is not None and now is not None:
                looked = True
                assert now <= was + abs(was) * ROOM + ROOM, f"{easy}  ->  {hard}: {was} to {now}"
        compared += looked
    assert compared * 2 >= count


@pytest.mark.parametrize("name", LAWS)
def test_a_law_in_a_few_draws(name: str) -> None:
    hold_to(name, QUICK, 1)


@pytest.mark.slow
@pytest.mark.laws
@pytest.mark.parametrize("name", LAWS)
def test_a_law_in_very_many_draws(name: str) -> None:
    hold_to(name, scale(FULL), SEED)


def everywhere(count: int) -> None:
    """24: no whole is above a part of it. 25: inch is metric, and the kind of lathe is no figure."""
    dice = random.Random(f"{SEED} everywhere")
    for _ in range(count):
        size, long, wood = dice.uniform(40, 350), dice.uniform(20, 200), dice.choice(WOODS)
        base = dice.choice(("BOWL", "SPINDLE"))
        base += f"; work.material={wood}{kit(base)}"
        found = of(f"{base}; work.diameter={size!r}mm; work.length={long!r}mm")
        if found["verdict"] != "do-not-mount":
            assert found["speed"]["ceiling_rpm"] == min(row["rpm"] for row in found["speed"]["limits"])
        if "allowed_n" in found["thrust"]:
            assert found["thrust"]["allowed_n"] == min(row["n"] for row in found["thrust"]["limits"])
        inch = of(f"{base}; work.diameter={size / 25.4!r}in; work.length={long / 25.4!r}in")
        other = of(f"{base}; work.diameter={size!r}mm; work.length={long!r}mm; machine.kind=metal-lathe; cut.tool=hand")
        for twin in (inch, other):
            assert ceiling(twin) == pytest.approx(ceiling(found), rel=1e-9) or twin is other
            limits = {row["name"]: row["rpm"] for row in twin["speed"]["limits"]}
            if twin["holding"][0]["method"] == found["holding"][0]["method"]:
                for row in found["speed"]["limits"]:
                    assert limits[row["name"]] == pytest.approx(row["rpm"], rel=1e-9)


def test_wholes_and_units_in_a_few_draws() -> None:
    everywhere(QUICK)


@pytest.mark.slow
@pytest.mark.laws
def test_wholes_and_units_in_very_many_draws() -> None:
    everywhere(scale(FULL))


def test_all_laws_are_here() -> None:
    numbers = {name.split()[0] for name in (*LAWS, *ONLY_A_FIGURE)}
    assert numbers | {"24", "25"} == {str(number) for number in range(1, 26)}
