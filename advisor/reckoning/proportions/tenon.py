"""A tenon for jaws, or what an engineers' chuck or a collet closes on."""

from __future__ import annotations

from typing import NamedTuple

from advisor.physics.proportions import tenon_grip_length, tenon_root_diameter
from advisor.reckoning.holds import jawed, sizes, strengths
from advisor.reckoning.holds.margins import steady_possible
from advisor.reckoning.holds.need import overhang
from advisor.reckoning.proportions.size import ENOUGH, Check, Circle, Proportions, Size, Trial, said, shop
from advisor.units import NEWTONS_PER_POUND

LEAST_SHARE_ALONE = 0.25  # of the diameter of side-grain work, tailstock away; common practice, no source
LEAST_SHARE_TAIL = 0.2  # common practice, no source
REACH_SIDE = 3.0  # diameters of a side-grain tenon that the work may stand out alone; common practice, no source
REACH_END = 4.0  # common practice, no source
LEAST_TENON_MM = 10.0  # less is a pin; memory
CLEAR_MM = 2.0  # between the end of a tenon and the bottom of the jaws; common practice, no source
FOOT_SHARE = 0.25  # of the work's length that a tenon may take; common practice, no source
TAKES_UP_TO = {  # common practice, no source
    "collet": 40.0,
    "collet-block": 40.0,
    "split-bushing": 75.0,
    "soft-jaws": 150.0,
    "three-jaw": 150.0,
    "four-jaw-independent": 150.0,
    "drill-chuck": 12.0,
}
LENGTH_WHY = {"jaws-on-tenon": "the shoulder holds, not length", "long-jaws": "as long as the jaws bite"}
END_SHARE = 0.85  # of the end face that a tenon may take; memory
FIELD = "tenon.diameter"
ON_A_TENON = ("jaws-on-tenon", "long-jaws")
WORTH_TELLING = 0.6  # of the tenon: a root that asks for less decides nothing; numerics
DIFFERENCE = 0.01  # of the margin; less is not worth telling; numerics


class _Span(NamedTuple):
    """Smallest diameter that practice takes and largest there is room for, with what sets either."""

    low: float
    high: float
    why_low: str
    why_high: str


def _span(trial: Trial) -> _Span:
    situation = trial.situation
    body, chuck = situation.body, situation.case.hold.chuck
    end = body.end_diameter
    lows = [(LEAST_TENON_MM, "thinner is a pin")]
    highs = [(end, "the end face")]
    if trial.method in ("jaws-on-tenon", "long-jaws"):
        tail = trial.job.tail_up
        alone = not tail and not steady_possible(situation)
        if situation.side_grain and trial.method == "jaws-on-tenon":
            share = LEAST_SHARE_TAIL if tail else LEAST_SHARE_ALONE
            lows.append((share * body.diameter, f"1/{1 / share:.0f} of the work across the grain"))
            highs.append((sizes.TENON_LARGEST_MM, "larger jaws are not ordinary"))
        if alone and trial.method == "jaws-on-tenon":
            reach = REACH_SIDE if situation.side_grain else REACH_END
            lows.append((overhang(situation) / reach, f"the work stands out at most {reach:g} tenons"))
        highs.append((max(END_SHARE * end, end - 2 * sizes.TENON_SHOULDER_MM), "a shoulder must be left round it"))
    else:
        highs.append((TAKES_UP_TO[trial.method], "the most it takes"))
    if chuck is not None and chuck.jaw_smallest is not None:
        lows.append((chuck.jaw_smallest, "the jaws close no further"))
    if chuck is not None and chuck.jaw_largest is not None:
        highs.append((chuck.jaw_largest, "the jaws open no further"))
    low, high = max(lows), min(highs)
    return _Span(low[0], high[0], low[1], high[1])


def _length(trial: Trial, diameter: float) -> Size:
    """Long enough to be gripped, short enough to leave the jaws' bottom and the foot alone."""
    situation = trial.situation
    hold, body = situation.case.hold, situation.body
    own = hold.tenon.length if hold.tenon is not None else None
    if trial.method == "jaws-on-tenon":
        across = body.diameter / 20 if situation.side_grain else diameter / 5
        advised = sizes.clamp(across, 8.0 if situation.side_grain else 6.0, 12.0)
    else:
        advised = sizes.OUTSIDE_GRIP_MM
    depth = hold.chuck.jaw_depth if hold.chuck is not None else None
    room = [(FOOT_SHARE * body.length, "more would take the wood of the foot")]
    if depth is not None:
        room.append((depth - CLEAR_MM, "the jaws are no deeper"))
    if trial.method not in ("jaws-on-tenon", "long-jaws"):
        room[0] = (body.length, "its whole length")
    most, why = min(room)
    most = max(most, 0.0)
    return Size(
        "tenon.length",
        own if own is not None else shop(min(advised, most), most),
        "mm",
        own is not None,
        trial.least("tenon.length", sizes.TENON_SHORTEST_MM, most, {FIELD: diameter})
        if trial.method in ON_A_TENON
        else None,
        most,
        why if most < advised else LENGTH_WHY.get(trial.method, ""),
    )


def _value(trial: Trial, span: _Span, least: float | None) -> tuple[float, str]:
    """The diameter to make, and what sets it: the jaws' true circle, the size of practice, or the load."""
    advised = trial.figures({FIELD: span.high} if span.low > span.high else None).size or span.high
    floor = least if least is not None else span.high
    chuck = trial.situation.case.hold.chuck
    circle = chuck.jaw_circle if chuck is not None and trial.method in ON_A_TENON else None
    if circle is not None and floor <= circle <= span.high:
        return circle, "the true circle of the jaws"
    if trial.method not in ON_A_TENON:
        advised = trial.situation.body.end_diameter
    if advised > span.high:
        return span.high, span.why_high
    if advised < floor:
        return shop(floor, span.high), "the cut asks for it" if floor > span.low else span.why_low
    return shop(advised, span.high), "what the trade makes it" if trial.method in ON_A_TENON else "the work itself"


def _checks(trial: Trial, found: jawed.Ways) -> tuple[tuple[Check, ...], str]:
    """What crushes, snaps, tips and turns it, and which comes first."""
    need, divisor = trial.job.need, trial.divisor
    checks = [
        Check("crushing", found.crushes.typical, found.key.typical, "N", "estimate"),
        Check("turning", found.turns.typical / divisor, need.torque, "N·m", "rough-guide"),
    ]
    first = "turns"
    stands = found.tips.typical
    if need.moment > 0:
        checks.append(Check("tipping", stands / divisor, need.moment, "N·m", "rough-guide"))
        if found.snaps is not None:
            checks.append(Check("snapping", found.snaps.typical / divisor, need.moment, "N·m", "estimate"))
            stands = min(stands, found.snaps.typical)
        if need.torque <= 0 or need.moment / max(stands, 1e-9) > need.torque / max(found.turns.typical, 1e-9):
            first = "snaps" if found.snaps is not None and found.snaps.typical < found.tips.typical else "tips"
    if first != "snaps" and found.crushes.typical < found.key.typical:
        first = "crushes"
    return tuple(checks), first


def _circle(trial: Trial, diameter: float) -> Circle | None:
    """Margins on the true circle of the jaws and off it; None where it makes no difference to this hold."""
    if trial.method not in ON_A_TENON:
        return None
    chuck = trial.situation.case.hold.chuck
    own = chuck.jaw_circle if chuck is not None else None
    on = trial.margin({FIELD: diameter, "chuck.jaw_circle": diameter})
    off = trial.margin({FIELD: diameter, "chuck.jaw_circle": diameter / (1 + jawed.CIRCLE_FAR)})
    if on is None or off is None or on < ENOUGH or on - off <= DIFFERENCE * on:
        return None
    return Circle(own, on, off)


def _notes(trial: Trial, found: jawed.Ways, length: Size, diameter: float) -> tuple[str, ...]:
    """Grip that crushes, and the length and the root that the load alone would ask for."""
    notes = []
    pressure = strengths.crushing(trial.situation)
    if pressure is not None and found.crushes.typical < found.key.typical:
        longer = tenon_grip_length(
            grip=found.key.typical, diameter=diameter, strength=pressure.typical, contact=found.contact
        )
        told = f"a tenon {said(shop(longer))} long would stand it" if longer > length.value else "go easy on the key"
        notes.append(
            f"a firm key crushes it: it grips with {_newtons(found.key.typical)} and the wood stands "
            f"{_newtons(found.crushes.typical)}; {told}"
        )
    bending = strengths.root(trial.situation)
    need = trial.job.need
    if bending is not None and need.moment > 0:
        root = tenon_root_diameter(moment=need.moment, strength=bending.low, divisor=trial.divisor)
        if root < WORTH_TELLING * diameter:
            return tuple(notes)
        grain = "across" if trial.situation.traits.grain != "along" else "along"
        notes.append(f"with the grain {grain} it, {said(shop(root))} is the least its root asks for")
    return tuple(notes)


def _newtons(force: float) -> str:
    """A force to two figures, as both systems say it."""
    return f"{float(f'{force:.2g}'):.0f} N ({float(f'{force / NEWTONS_PER_POUND:.2g}'):.0f} lbf)"


def tenon(trial: Trial) -> Proportions:
    """Diameter, length and shoulder of what the jaws close on."""
    span = _span(trial)
    least = trial.least(FIELD, span.low, span.high)
    given = trial.situation.case.hold.tenon
    own = given.diameter if given is not None else None
    value, why = _value(trial, span, least)
    diameter = own if own is not None else value
    made = trial.with_sizes({FIELD: diameter})
    length = _length(made, diameter)
    made = made.with_sizes({"tenon.length": length.value}) if length.value > 0 else made
    parts = [Size(FIELD, diameter, "mm", own is not None, least, span.high, why)]
    if trial.method in ON_A_TENON:
        parts.append(length)
    if trial.method == "jaws-on-tenon":
        end = trial.situation.body.end_diameter
        ledge = given.shoulder_diameter if given is not None else None
        advised = min(end, diameter + 2 * sizes.TENON_SHOULDER_MM)
        why = "square, tight on the jaw faces"
        parts.append(Size("tenon.shoulder_diameter", ledge or advised, "mm", ledge is not None, diameter, end, why))
    return _told(made, tuple(parts), span)


def _told(made: Trial, parts: tuple[Size, ...], span: _Span) -> Proportions:
    diameter, least = parts[0].value, parts[0].least
    margin = made.margin()
    found = jawed.ways(made.job)
    notes: tuple[str, ...] = ()
    if span.low > span.high:
        notes = (f"no tenon fits: {span.why_low}, at least {said(span.low)}; {span.why_high}, {said(span.high)}",)
    elif least is None and margin is not None:
        notes = (f"none up to {said(span.high)} carries this cut ({span.why_high})",)
    if found is None:
        return Proportions(made.method, parts, None, None, "", notes=notes)
    checks, first = _checks(made, found)
    if made.method in ON_A_TENON:
        length = parts[1]
        notes += _notes(made, found, length, diameter)
    enough = margin is not None and margin >= ENOUGH and span.low <= span.high
    return Proportions(made.method, parts, enough, margin, first, checks, _circle(made, diameter), notes)
