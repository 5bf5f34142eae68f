"""The press fit of a jam chuck, and suction."""

from __future__ import annotations

import math

from advisor.models.wood import SPLIT_MODULUS_PERPENDICULAR
from advisor.physics import jaws, vacuum
from advisor.reckoning.holds import sizes, strengths
from advisor.reckoning.holds.capacity import Capacity, Divisors, Job, Model
from advisor.reckoning.holds.workmanship import Ends, workmanship

DIVISORS_JAM = Divisors(1.5, 2.5)  # memory
DIVISORS_VACUUM = Divisors(vacuum.VACUUM_DIVISOR, vacuum.VACUUM_DIVISOR)
HOOP_DIVISOR = 3.0  # memory
FLOOR_DIVISOR = 3.0  # memory
POISSON = 0.3  # memory


def jam_chuck(job: Job) -> Model:
    """A spigot pressed into a socket.

        p = E90·δ/(2d)·(1 - (d/D)²), hoop tension p·(D² + d²)/(D² - d²) at most f_t90/3
        F = p·π·d·h;  T = µ·F·d/2;  M = F·(h/12 + µ·d/π);  P = µ·F

    Source: thick ring and statics, derived; fit, length and friction from memory.
    """
    situation = job.situation
    model = Model(DIVISORS_JAM)
    outer = situation.body.end_diameter
    diameter = sizes.JAM_SHARE * outer
    model.size = model.take("jam.diameter", None, diameter)
    fit, length, rub = (workmanship(job.method, name) for name in ("fit", "length", "friction"))
    model.sizes["length"] = length.low
    model.suppose("hold.jam.fit", f"{fit.low:g} to {fit.typical:g} mm on the diameter", "workmanship")
    wood = situation.wood
    stiff = Ends(SPLIT_MODULUS_PERPENDICULAR.low, SPLIT_MODULUS_PERPENDICULAR.typical)
    if wood is not None:
        stiff = Ends(wood.modulus_perpendicular.low, wood.modulus_perpendicular.typical)
    tension = strengths.splitting(situation)
    share = (diameter / outer) ** 2
    ends = []
    for end in (0, 1):
        pressure = stiff[end] * 1e3 * fit[end] / (2 * diameter) * (1 - share)
        if tension is not None:
            pressure = min(pressure, tension[end] / HOOP_DIVISOR * (1 - share) / (1 + share))
        force = pressure * math.pi * diameter * length[end]
        torque = jaws.jaw_torque(friction=rub[end], grip=force, diameter=diameter)
        moment = jaws.jaw_moment(friction=rub[end], grip=force, diameter=diameter, length=length[end])
        ends.append(Capacity(torque, moment, rub[end] * force))
    model.low, model.typical = ends
    return model


def _suction(job: Job, model: Model) -> float:
    """Suction in kPa: the gauge as read with the work on, never more than the air there is."""
    case = job.situation.case
    air = vacuum.air_pressure(altitude=case.machine.altitude or 0.0)
    gauge = case.hold.vacuum.gauge if case.hold.vacuum is not None else None
    if gauge is not None:
        return min(gauge, air)
    usual = min(workmanship(job.method, "pressure").low, vacuum.ATTAINED_HIGH * air)
    model.suppose("hold.vacuum.gauge", f"{usual:.3g} kPa", "a poor seal: read at least 20 inHg first, with the work on")
    return usual


def suction(job: Job) -> Model:
    """A plate or drum with a seal.

        F = Δp·π·d²/4;  T = µ·F·d/2;  M = F·d/4 (half of overturning, where the seal starts to lift);  P = F

    A floor the person stated must stand the suction: 3·(3+ν)/8·Δp·(R/t)² at most f_t90/3.
    Source: statics and plate theory, derived; friction from memory.
    """
    model = Model(DIVISORS_VACUUM, "estimate")
    diameter = sizes.seal(job, model)
    pressure = _suction(job, model)
    force = vacuum.vacuum_force(pressure=pressure, diameter=diameter)
    rub = workmanship(job.method, "friction")
    lifts = vacuum.seal_moment(force, diameter / 2)
    model.low = Capacity(vacuum.seal_torque(rub.low, force, diameter / 2), lifts, force)
    model.typical = Capacity(vacuum.seal_torque(rub.typical, force, diameter / 2), lifts, force)
    floor = job.situation.case.work.floor
    tension = strengths.splitting(job.situation)
    if floor is not None and floor > 0 and tension is not None and pressure > 0:
        stress = vacuum.suction_floor_stress(
            pressure=pressure, radius=diameter / 2, thickness=floor, poisson=POISSON
        )
        model.ceiling = ("floor", tension.low / FLOOR_DIVISOR, stress)
    return model
