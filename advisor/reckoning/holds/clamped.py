"""Clamps on a slotted plate, and the holds that borrow another's fixing."""

from __future__ import annotations

from advisor.reckoning.holds import jawed, screwed, strengths
from advisor.reckoning.holds.capacity import Capacity, Divisors, Job, Model
from advisor.reckoning.holds.workmanship import workmanship

DIVISORS = Divisors(1.5, 2.5)  # memory
CLAMPS = 3  # common practice, no source
CLAMP_CIRCLE = 0.8  # of the diameter; memory
COLLET_MOST_MM = 40.0  # common practice, no source


def clamps(job: Job) -> Model:
    """Three clamps near the rim press the work on a plate.

        T = µ·n·F·r;  M = F·Σx²/x_max, tipping over the rim;  P = n·F

    Source: statics, derived; clamp force from memory.
    """
    model = Model(DIVISORS)
    diameter = job.situation.body.diameter
    model.size = diameter
    force = workmanship("clamped-faceplate", "clamp")
    model.suppose("clamps", f"{CLAMPS} of {force.low:g} to {force.typical:g} N", "tightened by hand; workmanship")
    rub = strengths.friction(job.situation)
    circle = CLAMP_CIRCLE * diameter
    ends = []
    for end in (0, 1):
        total = CLAMPS * force[end]
        ends.append(
            Capacity(
                rub[end] * total * circle / 2 * 1e-3,
                screwed.group_moment(force[end], CLAMPS, circle, diameter),
                total,
            )
        )
    model.low, model.typical = ends
    return model


def offset_faceplate(job: Job) -> Model:
    """Screws in wood, clamps on anything else."""
    return screwed.faceplate(job) if job.situation.wood is not None else clamps(job)


def through_spindle(job: Job) -> Model:
    """The hold at the front: a collet where the kit has one and the bar is thin, else a three-jaw chuck."""
    thin = job.situation.body.end_diameter <= COLLET_MOST_MM
    front = "collet" if thin and "collet" in (job.situation.case.hold.kit or ()) else "three-jaw"
    model = jawed.outside(job._replace(method=front))
    model.suppose("front hold", front, "what holds the bar in front was not given")
    return model
