"""Glue blocks, paper joints and tape."""

from __future__ import annotations

import math

from advisor.physics import glue
from advisor.reckoning.holds import sizes, strengths
from advisor.reckoning.holds.capacity import NOTHING, Capacity, Divisors, Job, Model
from advisor.reckoning.holds.workmanship import UNNAMED_ADHESIVE, adhesive

DIVISORS_GLUE = Divisors(glue.GLUE_DIVISOR, glue.GLUE_DIVISOR)
DIVISORS_TAPE = Divisors(3.0, 3.0)  # memory


def _kind(job: Job, model: Model) -> str:
    if job.method == "double-sided-tape":
        return "tape"
    given = job.situation.case.hold.glue
    if given is not None and given.kind not in (None, "other"):
        return str(given.kind)
    field = "hold.glue.kind" if given is None or given.kind is None else "strength of the other glue"
    model.suppose(field, UNNAMED_ADHESIVE, "the weakest of those in use")
    return UNNAMED_ADHESIVE


def _share(job: Job) -> float:
    """What grain, wet wood, paper and imperfect contact leave of the bond."""
    situation = job.situation
    share = 1.0 if job.method == "double-sided-tape" else glue.AREA_TOUCHED
    if job.method == "paper-joint":
        share *= glue.PAPER_JOINT
    if situation.wood is not None and not situation.side_grain:
        share *= glue.END_GRAIN
    return share * glue.GREEN_WOOD if situation.traits.green else share


def bond(job: Job) -> Model:
    """A round bond in torsion and in opening.

        T = π·τ·d³/16;  M = π·σ·d³/32;  P = σ·π·d²/4,  σ = peel share × τ

    τ is never more than 0.7 of the wood's shear strength, σ than its tension across the grain. A bond that has not
    cured stands nothing. Source: derived; strengths and shares from memory.
    """
    tape = job.method == "double-sided-tape"
    model = Model(DIVISORS_TAPE if tape else DIVISORS_GLUE)
    diameter = sizes.glued(job, model)
    strength = adhesive(_kind(job, model))
    given = job.situation.case.hold.glue
    if given is not None and given.cured is False:
        model.low = model.typical = NOTHING
        return model
    if not tape and (given is None or given.cured is None):
        model.suppose("hold.glue.cured", "yes", "nothing is mounted on glue that has not fully cured")
    share = _share(job)
    shear_cap = strengths.shear_cap(job.situation)
    peel_cap = strengths.splitting(job.situation)
    torque = glue.glue_torque(shear=1.0, diameter=diameter)
    moment = glue.glue_moment(peel=1.0, diameter=diameter)
    area = math.pi / 4 * diameter**2
    ends = []
    for end in (0, 1):
        shear = share * strength.shear[end]
        peel = strength.peel * shear
        if shear_cap is not None:
            shear = min(shear, shear_cap[end])
        if peel_cap is not None:
            peel = min(peel, peel_cap[end])
        ends.append(Capacity(shear * torque, peel * moment, peel * area))
    model.low, model.typical = ends
    return model
