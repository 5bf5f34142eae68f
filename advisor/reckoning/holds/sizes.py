"""The size of every hold: the person's own, else what the trade would make it. All mm; common practice, no source."""

from __future__ import annotations

from advisor.reckoning.holds.capacity import Job, Model
from advisor.reckoning.holds.methods import GLUED, SCREW_METHODS
from advisor.situation import Situation

OUTSIDE_GRIP_MM = 25.0  # common practice, no source
BUTTON_HEIGHT_MM = 10.0  # common practice, no source
TENON_LARGEST_MM = 150.0  # common practice, no source
TENON_SHOULDER_MM = 8.0  # of flat beside the tenon; common practice, no source
TENON_SHORTEST_MM = 6.0  # shorter gives the jaws nothing; common practice, no source
RECESS_SHARE = 0.3  # of the diameter; common practice, no source
RECESS_LARGEST_MM = 100.0  # common practice, no source
RECESS_DEPTH_MM = 4.0  # common practice, no source
RECESS_FOOT_MM = 40.0  # a finished foot is this much wider than its recess; common practice, no source
PLATE_LEAST_MM = 75.0  # common practice, no source
PLATE_MOST_MM = 200.0  # common practice, no source
CIRCLE_OF_PLATE = 0.8  # common practice, no source
SCREW_MM = 5.5  # common practice, no source
SCREW_THREAD_SIDE_MM = 25.0  # common practice, no source
SCREW_THREAD_END_MM = 45.0  # common practice, no source
WORM_BORDER_MM = 150.0  # common practice, no source
WORMS = ((8.0, 25.0), (10.0, 30.0))  # diameter and thread, up to the border and above it; common practice, no source
BLOCK_WHOLE_FACE_MM = 75.0  # common practice, no source
BLOCK_SHARE = 0.5  # common practice, no source
BLOCK_SHARE_HARD = 0.67  # stone, resin and their like; common practice, no source
HARD_FAMILIES = frozenset({"stone", "resin", "hybrid"})
TAPE_MOST_MM = 100.0  # common practice, no source
JAM_SHARE = 0.85  # common practice, no source
SEAL_SHARE = 0.6  # common practice, no source


def clamp(value: float, low: float, high: float) -> float:
    """`value` kept between both ends."""
    return min(max(value, low), high)


def _tenon_advised(situation: Situation) -> tuple[float, float]:
    body = situation.body
    if situation.side_grain:
        diameter = min(TENON_LARGEST_MM, max(min(0.4 * body.diameter, 100.0), body.diameter / 4))
        return diameter, clamp(body.diameter / 20, 8.0, 12.0)
    end = body.end_diameter
    diameter = min(0.85 * end, max(0.4 * end, body.length / 3.5))
    return diameter, clamp(diameter / 5, 6.0, 12.0)


def within_jaws(situation: Situation, diameter: float) -> float:
    """A diameter kept to what the person's jaws close on, where they said it."""
    chuck = situation.case.hold.chuck
    if chuck is None:
        return diameter
    return clamp(diameter, chuck.jaw_smallest or 0.0, chuck.jaw_largest or diameter)


def tenon(job: Job, model: Model) -> tuple[float, float, float]:
    """Diameter, length and shoulder radius of a tenon for jaws."""
    situation = job.situation
    given = situation.case.hold.tenon
    diameter, length = _tenon_advised(situation)
    diameter = within_jaws(situation, diameter)
    model.given = given is not None and given.diameter is not None
    diameter = model.take("tenon.diameter", given.diameter if given else None, diameter)
    diameter = min(diameter, situation.body.end_diameter)
    if not situation.side_grain:
        length = clamp(diameter / 5, 6.0, 12.0)
    length = model.take("tenon.length", given.length if given else None, length)
    broad = min(situation.body.end_diameter, diameter + 2 * TENON_SHOULDER_MM)
    shoulder = model.take("tenon.shoulder_diameter", given.shoulder_diameter if given else None, broad)
    model.size = diameter
    return diameter, length, max(min(shoulder, situation.body.end_diameter), diameter) / 2


def long_tenon(job: Job, model: Model) -> tuple[float, float]:
    """Diameter and length of the grip of long jaws."""
    situation = job.situation
    given = situation.case.hold.tenon
    end = situation.body.end_diameter
    model.given = given is not None and given.diameter is not None
    advised = within_jaws(situation, clamp(0.6 * end, 25.0, 75.0))
    diameter = model.take("tenon.diameter", given.diameter if given else None, advised)
    length = model.take("tenon.length", given.length if given else None, OUTSIDE_GRIP_MM)
    model.size = min(diameter, end)
    return model.size, length


def outside(job: Job, model: Model) -> float:
    """Diameter that an engineers' chuck or a collet closes on: a turned tenon where there is one, else the work."""
    given = job.situation.case.hold.tenon
    own = given.diameter if given is not None else None
    model.given = own is not None
    model.size = min(own, job.situation.body.end_diameter) if own is not None else job.situation.body.end_diameter
    return model.size


def recess(job: Job, model: Model) -> tuple[float, float, float]:
    """Diameter and depth of a recess, and the diameter of the wood round it."""
    situation = job.situation
    given = situation.case.hold.recess
    outside_work = situation.body.end_diameter
    model.given = given is not None and given.diameter is not None
    advised = min(RECESS_SHARE * situation.body.diameter, RECESS_LARGEST_MM)
    diameter = model.take("recess.diameter", given.diameter if given else None, advised)
    depth = model.take("recess.depth", given.depth if given else None, RECESS_DEPTH_MM)
    foot = diameter + RECESS_FOOT_MM if situation.traits.state == "finished" else outside_work
    wall = max((min(foot, outside_work) - diameter) / 2, 0.0)
    wall = model.take("recess.wall", given.wall if given else None, wall)
    model.size = diameter
    return diameter, depth, min(diameter + 2 * wall, outside_work)


def _screw_count(diameter: float) -> int:
    return 4 if diameter <= 200 else 6 if diameter <= 300 else 8


def _screws_given(job: Job) -> bool:
    """Whether the screws of the case belong to this method."""
    hold = job.situation.case.hold
    if hold.screws is None:
        return False
    if hold.method in SCREW_METHODS:
        return hold.method == job.method
    return (hold.screws.count == 1) == (job.method == "screw-chuck")


def faceplate(job: Job, model: Model) -> tuple[int, float, float, float, float]:
    """Screws: how many, diameter, thread in the work, their circle; and the plate."""
    body = job.situation.body
    given = job.situation.case.hold.screws if _screws_given(job) else None
    model.given = given is not None
    own_circle = given.circle if given else None
    plate = min(clamp(0.4 * body.diameter, PLATE_LEAST_MM, PLATE_MOST_MM), body.diameter)
    if own_circle is not None:
        plate = min(max(own_circle / CIRCLE_OF_PLATE, own_circle), body.diameter)
    model.take("screws.plate", None if own_circle is None else plate, plate)
    circle = min(model.take("screws.circle", own_circle, CIRCLE_OF_PLATE * plate), plate)
    count = model.take("screws.count", given.count if given else None, _screw_count(body.diameter), "screws")
    diameter = model.take("screws.diameter", given.diameter if given else None, SCREW_MM)
    thread = SCREW_THREAD_SIDE_MM if job.situation.side_grain else SCREW_THREAD_END_MM
    length = model.take("screws.length", given.length if given else None, min(thread, body.length / 2))
    model.size = plate
    return int(count), diameter, min(length, body.length), circle, plate


def worm(job: Job, model: Model) -> tuple[float, float, float]:
    """Diameter and thread of a screw chuck's screw, and the diameter of its face."""
    body = job.situation.body
    given = job.situation.case.hold.screws if _screws_given(job) else None
    model.given = given is not None
    face = clamp(0.5 * body.diameter, min(40.0, 0.8 * body.diameter), 100.0)
    model.take("screws.face", None, face)
    advised, thread = WORMS[0] if body.diameter <= WORM_BORDER_MM else WORMS[1]
    diameter = model.take("screws.diameter", given.diameter if given else None, advised)
    length = model.take("screws.length", given.length if given else None, min(thread, body.length / 2))
    model.size = face
    return diameter, min(length, body.length), face


def glued(job: Job, model: Model) -> float:
    """Diameter of the glued face, or of the patch of tape."""
    situation = job.situation
    hold = situation.case.hold
    given = hold.glue.diameter if hold.glue is not None else None
    belongs = hold.method == job.method or (hold.method not in (*GLUED, "double-sided-tape"))
    given = given if belongs else None
    diameter, end = situation.body.diameter, situation.body.end_diameter
    if job.method == "double-sided-tape":
        advised = min(0.95 * end, TAPE_MOST_MM)
    else:
        hard = situation.material is not None and situation.material.family in HARD_FAMILIES
        share = BLOCK_SHARE_HARD if hard else BLOCK_SHARE
        advised = end if end <= BLOCK_WHOLE_FACE_MM else max(BLOCK_WHOLE_FACE_MM, share * diameter)
    model.given = given is not None
    model.size = min(model.take("glue.diameter", given, min(advised, end)), end)
    return model.size


def seal(job: Job, model: Model) -> float:
    """Diameter of a suction seal."""
    vacuum = job.situation.case.hold.vacuum
    given = vacuum.seal_diameter if vacuum is not None else None
    body = job.situation.body
    model.given = given is not None
    model.size = min(model.take("vacuum.seal_diameter", given, SEAL_SHARE * body.diameter), body.diameter)
    return model.size
