"""Drives that need the tailstock: teeth sunk in, rims and pads pressed on."""

from __future__ import annotations

from advisor.reckoning import ends as ends_of_work
from advisor.reckoning.drives import Drive, drive_for, measured_grip, seat_depth, tooth_bearing
from advisor.reckoning.holds.capacity import Capacity, Divisors, Job, Model
from advisor.reckoning.holds.strengths import friction
from advisor.reckoning.holds.workmanship import Ends, workmanship
from advisor.situation import Situation
from advisor.situation.shape import CHECKS, SOFT_WOOD

DIVISORS = Divisors(1.5, 1.5)  # memory
DIVISORS_FEED_GOES_ON = Divisors(2.5, 2.5)  # memory
RING_ARM = 0.45  # of the outside diameter; memory
PAD_SHARE = 0.5  # memory
PAD_MEAN = 2 / 3  # derived: mean radius of an even pressure
CUP_OF_BALL = 0.6  # memory
MANDREL_RADIUS_MM = 6.0  # common practice, no source
MANDREL_FACES = 2  # derived: both end faces rub
WEAK_END_GRIP = 0.5  # memory
MEASURED_LOW = 0.8  # a measured pair is known to 20 %; memory
WEAK_END = CHECKS | SOFT_WOOD | {"pith"}
FREE = float("inf")  # the tail stands against tipping and pull


def _model(job: Job) -> Model:
    return Model(DIVISORS_FEED_GOES_ON if job.situation.cut.carriage else DIVISORS)


def _torques(model: Model, low: float, typical: float) -> Model:
    model.low, model.typical = Capacity(low, FREE, FREE), Capacity(typical, FREE, FREE)
    return model


def allowed_thrust(situation: Situation, drive: Drive) -> float:
    """Thrust in N that both ends and the bar stand, at most what a firm handwheel gives."""
    center = ends_of_work.tail_center(situation)
    limits = [
        ends_of_work.crushing(situation, center),
        ends_of_work.splitting(situation, center, drive),
    ]
    values = [limit.value for limit in limits if limit is not None]
    buckling = ends_of_work.buckling_capacity(situation, True)
    if buckling is not None:
        values.append(buckling[0].value)
    return min([center.rating, *values])


def _pressed_grip(job: Job, drive: Drive) -> Ends:
    measured = measured_grip(job.situation, drive.share, drive.mean_radius)
    if measured is not None:
        return Ends(MEASURED_LOW * measured, measured)
    if drive.kind in ("ring", "cup"):
        usual = workmanship("toothed-ring-drive" if drive.kind == "ring" else "cup-drive", "grip")
    else:
        usual = Ends(drive.effective.low, drive.effective.design)
    weak = WEAK_END_GRIP if job.situation.traits.conditions & WEAK_END else 1.0
    return Ends(weak * usual.low, weak * usual.typical)


def _pressed(job: Job, model: Model, drive: Drive) -> Model:
    """T = C·s·F·r_m at 1 kN (a cup 0.6 kN), or at what the ends stand if that is less."""
    thrust = min(workmanship(job.method, "thrust").typical, allowed_thrust(job.situation, drive))
    model.suppose("tail thrust", f"{float(f'{thrust:.2g}'):g} N", "a firm handwheel, no more than the ends stand")
    arm = RING_ARM * drive.outer if drive.kind == "ring" and not drive.given else drive.mean_radius
    grip = _pressed_grip(job, drive)
    unit = drive.share * thrust * min(arm, drive.mean_radius) * 1e-3
    return _torques(model, unit * grip.low, unit * grip.typical)


def toothed(job: Job) -> Model:
    """Spurs, toothed rings and cups.

    Spurs in wood are judged with their teeth sunk in, as deep as advised or as given: T = N·k_u·f90·L·h·r_m, low end
    with the 5 % strength. Pressed only when the person says so, and always for rings and cups. Source: derived, memory.
    """
    situation = job.situation
    model = _model(job)
    drive = drive_for(situation, job.method)
    if drive is None or drive.kind == "point":
        return model
    model.size, model.given = drive.outer, drive.given
    model.sizes["outer_diameter"] = drive.outer
    model.assumed.extend(drive.assumed)
    wood = situation.wood
    depth = situation.case.hold.drive.seated_depth if situation.case.hold.drive is not None else None
    if wood is None or drive.kind in ("ring", "cup") or depth == 0:
        return _pressed(job, model, drive)
    safety = model.divisors.up
    advised, most = seat_depth(situation, drive, job.need.torque, safety)
    depth = min(model.take("drive.seated_depth", depth, advised), most)
    low, typical = wood.perpendicular.low, wood.perpendicular.typical
    return _torques(model, tooth_bearing(situation, drive, depth, low), tooth_bearing(situation, drive, depth, typical))


def friction_block(job: Job) -> Model:
    """A soft-faced pad of half the diameter under the tail's thrust: T = µ·F·(2/3)·R. Source: derived, memory."""
    model = _model(job)
    diameter = model.take("pad.diameter", None, PAD_SHARE * job.situation.body.diameter)
    model.size = diameter
    return _pad(job, model, PAD_MEAN * diameter / 2)


def sphere_cups(job: Job) -> Model:
    """Two cups of 0.6 of the ball; only the one in the headstock drives: T = µ·F·r. Source: derived, memory."""
    model = _model(job)
    diameter = model.take("cup.diameter", None, CUP_OF_BALL * job.situation.body.diameter)
    model.size = diameter
    return _pad(job, model, diameter / 2)


def _pad(job: Job, model: Model, arm: float) -> Model:
    thrust, rub = workmanship(job.method, "thrust"), workmanship(job.method, "friction")
    model.suppose("tail thrust", f"{thrust.low:g} to {thrust.typical:g} N", "light thrust on a soft face; workmanship")
    unit = arm * 1e-3
    return _torques(model, rub.low * thrust.low * unit, rub.typical * thrust.typical * unit)


def mandrel(job: Job) -> Model:
    """Two faces at a radius of 6 mm under the nut: T = 2·µ·F·r. Source: derived; thrust of the nut from memory."""
    model = _model(job)
    nut, rub = workmanship(job.method, "thrust"), friction(job.situation)
    model.suppose("mandrel nut", f"{nut.low:g} to {nut.typical:g} N", "finger tight; workmanship")
    radius = min(MANDREL_RADIUS_MM, job.situation.body.end_diameter / 2)
    model.size = model.sizes["diameter"] = 2 * radius
    unit = MANDREL_FACES * radius * 1e-3
    return _torques(model, rub.low * nut.low * unit, rub.typical * nut.typical * unit)
