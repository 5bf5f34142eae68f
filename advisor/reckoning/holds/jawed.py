"""Jaws that close on the outside of the work, and jaws that open in a recess."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import NamedTuple

from advisor.physics import jaws
from advisor.reckoning.defects import defect_share
from advisor.reckoning.holds import sizes, strengths
from advisor.reckoning.holds.capacity import NOTHING, Capacity, Divisors, Job, Model
from advisor.reckoning.holds.workmanship import Ends, workmanship

DIVISORS = Divisors(1.5, 2.5)  # memory
GIVEN_GRIP_SHARE = 0.8  # a stated grip is known to 20 %; memory
CONTACT_SOFT = 0.5  # share of bored soft jaws that touches; memory
CIRCLE_SLACK = 0.04  # of the jaw circle; within it the jaws still touch fully; memory
CIRCLE_FAR = 0.20  # memory
FOUR_PADS_MM2 = 4 * 20 * 25  # memory
THREE_LINES_MM2 = 3 * 8 * 25  # memory
DRILL_LINES_MM2 = 3 * 2 * 15  # memory
RECESS_SHARE_OF_SPLIT = 0.5  # memory
FLOOR_DEPTHS = 2.0  # a floor thicker than twice the depth helps no more; memory


class _Seat(NamedTuple):
    """Gripped diameter and length in mm, radius of a shoulder on the jaws, share of the jaws that touches."""

    diameter: float
    length: float
    shoulder: float | None
    contact: float


def grip(job: Job, model: Model) -> Ends:
    """Sum of the radial jaw forces in N: the person's to 20 %, else a hand-tightened key."""
    chuck = job.situation.case.hold.chuck
    given = chuck.grip if chuck is not None else None
    if given is not None and job.situation.case.hold.method in (None, job.method, "through-spindle"):
        model.grade = "estimate"
        return Ends(GIVEN_GRIP_SHARE * given, given)
    usual = workmanship(job.method, "grip")
    model.suppose("hold.chuck.grip", f"{usual.low:g} to {usual.typical:g} N", "tightened by hand; workmanship")
    return usual


def _circle_contact(job: Job, diameter: float, contact: float) -> float:
    """Share that touches when the tenon is off the circle to which the jaws were ground; falls evenly to 0.3."""
    chuck = job.situation.case.hold.chuck
    circle = chuck.jaw_circle if chuck is not None else None
    if circle is None:
        return contact
    off = (abs(diameter - circle) / circle - CIRCLE_SLACK) / (CIRCLE_FAR - CIRCLE_SLACK)
    return contact - (contact - min(contact, jaws.CONTACT_OFF_CIRCLE)) * min(max(off, 0.0), 1.0)


def _gripped(job: Job, length: float) -> float:
    chuck = job.situation.case.hold.chuck
    depth = chuck.jaw_depth if chuck is not None else None
    reach = min(length, job.situation.body.length)
    return reach if depth is None else min(reach, depth)


def _seat(job: Job, model: Model) -> _Seat:
    method = job.method
    if method == "jaws-on-tenon":
        diameter, length, shoulder = sizes.tenon(job, model)
        return _Seat(diameter, _gripped(job, length), shoulder, _circle_contact(job, diameter, jaws.CONTACT_FITTING))
    if method == "long-jaws":
        diameter, length = sizes.long_tenon(job, model)
        return _Seat(diameter, _gripped(job, length), None, _circle_contact(job, diameter, jaws.CONTACT_FITTING))
    diameter = sizes.outside(job, model)
    length = _gripped(job, sizes.OUTSIDE_GRIP_MM)
    area = {
        "four-jaw-independent": FOUR_PADS_MM2,
        "three-jaw": THREE_LINES_MM2,
        "drill-chuck": DRILL_LINES_MM2,
    }.get(method)
    if area is not None:
        girth = math.pi * diameter * sizes.OUTSIDE_GRIP_MM
        return _Seat(diameter, length, None, min(jaws.CONTACT_FITTING, area / girth))
    return _Seat(diameter, length, None, CONTACT_SOFT if method == "soft-jaws" else jaws.CONTACT_FITTING)


@lru_cache(maxsize=256)
def _per_strength(seat: _Seat) -> tuple[float, float]:
    """Grip in N that crushes the seat and moment in N·m that breaks its root, each at 1 MPa."""
    crushes = jaws.jaw_crush_force(diameter=seat.diameter, length=seat.length, strength=1.0, contact=seat.contact)
    return crushes, jaws.tenon_root_moment(diameter=seat.diameter, strength=1.0)


@lru_cache(maxsize=256)
def _per_grip(rub: float, seat: _Seat) -> tuple[float, float]:
    """Torque and moment in N·m for each newton of grip."""
    torque = jaws.jaw_torque(friction=rub, grip=1.0, diameter=seat.diameter)
    if seat.shoulder is None:
        return torque, jaws.jaw_moment(friction=rub, grip=1.0, diameter=seat.diameter, length=seat.length)
    moment = jaws.jaw_moment(
        friction=rub, grip=1.0, diameter=seat.diameter, length=seat.length, shoulder_radius=seat.shoulder
    )
    return torque, moment


class Ways(NamedTuple):
    """How an outside grip may let go, each at the low end and typical: grip N of the key and grip N that crushes, then
    torque N·m that turns it, moment N·m that tips it and moment N·m that breaks its root (None: not known), all three
    at the smaller of the two grips. `contact` is the share of the girth that touches, `area` what touches in mm²."""

    key: Ends
    crushes: Ends
    turns: Ends
    tips: Ends
    snaps: Ends | None
    pulls: Ends
    contact: float
    area: float


def _ways(job: Job, model: Model) -> Ways | None:
    seat = _seat(job, model)
    usual = grip(job, model)
    pressure = strengths.crushing(job.situation)
    if pressure is None:
        model.missing.append(("crushing in the jaws", "compressive strength of this material"))
        return None
    bending = strengths.root(job.situation)
    rub = strengths.friction(job.situation)
    stands, unit_root = _per_strength(seat)
    dovetail = jaws.DOVETAIL_GAIN if job.method == "jaws-on-tenon" and defect_share(job.situation) == 1.0 else 1.0
    if bending is None:
        model.missing.append(("the root of the tenon", "tensile strength of this material"))
    crushes = Ends(stands * pressure.low, stands * pressure.typical)
    turns, tips, pulls = [], [], []
    for end in (0, 1):
        force = min(usual[end], crushes[end])
        torque, moment = _per_grip(rub[end], seat)
        turns.append(torque * force)
        tips.append(dovetail * force * moment)
        pulls.append(rub[end] * force)
    snaps = None if bending is None else Ends(unit_root * bending.low, unit_root * bending.typical)
    return Ways(usual, crushes, Ends(*turns), Ends(*tips), snaps, Ends(*pulls), seat.contact, stands)


def ways(job: Job) -> Ways | None:
    """How this outside grip may let go; None where the strength of the stuff is not known."""
    return _ways(job, Model(DIVISORS))


def outside(job: Job) -> Model:
    """Jaws, collet or bushing closed on the outside.

        F = min(grip, c·π·d·h·p);  T = µ·F·d/2;  P = µ·F
        M = F·(h/12 + µ·d/π), on a shoulder at least µ·F·R_s; never more than the root stands

    Crushing and the root where the strength is known. Source: derived; grip and contact from memory.
    """
    model = Model(DIVISORS)
    found = _ways(job, model)
    if found is None:
        return model
    tips = found.tips
    if found.snaps is not None:
        tips = Ends(min(tips.low, found.snaps.low), min(tips.typical, found.snaps.typical))
    model.low = Capacity(found.turns.low, tips.low, found.pulls.low)
    model.typical = Capacity(found.turns.typical, tips.typical, found.pulls.typical)
    return model


def recess(job: Job) -> Model:
    """Jaws opened in a recess: half the force that splits the rim, never more than hand-snug.

        T = µ·F·d/2;  M = 1.25·µ·F·d/2;  P = µ·F

    The depth counts with as much of the floor as is twice the depth; a floor nobody stated counts for nothing.
    Source: thick ring, derived; shares from memory.
    """
    model = Model(DIVISORS)
    diameter, depth, outer = sizes.recess(job, model)
    usual = grip(job, model)
    tension = strengths.splitting(job.situation)
    if tension is None:
        model.missing.append(("splitting of the recess", "tensile strength of this material"))
        return model
    floor = job.situation.case.work.floor
    if floor is None:
        model.suppose("work.floor", "not counted", "the floor under the recess was not given")
    if outer <= diameter:
        model.low = model.typical = NOTHING
        return model
    splits = jaws.recess_force(
        diameter=diameter,
        depth=depth + min(floor or 0.0, FLOOR_DEPTHS * depth),
        outside_diameter=outer,
        tension_perpendicular=1.0,
    )
    rub = strengths.friction(job.situation)
    ends = []
    for end in (0, 1):
        force = min(usual[end], RECESS_SHARE_OF_SPLIT * splits * tension[end])
        torque = jaws.jaw_torque(friction=rub[end], grip=force, diameter=diameter)
        ends.append(Capacity(torque, jaws.DOVETAIL_GAIN * torque, rub[end] * force))
    model.low, model.typical = ends
    return model


def buttons(job: Job) -> Model:
    """Wide jaws with rubber buttons round the rim.

        T = µ·F·D/2;  M = F/2·(h/12 + µ·D/π), h = 10 mm;  P = µ·F

    Source: derived; pinch and friction from memory.
    """
    model = Model(DIVISORS)
    diameter = job.situation.body.diameter
    model.size = diameter
    pinch = workmanship(job.method, "grip")
    rub = workmanship(job.method, "friction")
    model.suppose("pinch of the buttons", f"{pinch.low:g} to {pinch.typical:g} N", "tightened by hand; workmanship")
    ends = []
    for end in (0, 1):
        torque = jaws.jaw_torque(friction=rub[end], grip=pinch[end], diameter=diameter)
        moment = jaws.jaw_moment(
            friction=rub[end], grip=pinch[end], diameter=diameter, length=sizes.BUTTON_HEIGHT_MM
        )
        ends.append(Capacity(torque, moment / 2, rub[end] * pinch[end]))
    model.low, model.typical = ends
    return model
