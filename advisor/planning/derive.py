"""The case of one stage: the person's case as the stages before it left the piece. Nothing else of it changes."""

from __future__ import annotations

from typing import Any

from advisor.models.case import Case, Tenon
from advisor.models.fields import changed
from advisor.physics.drying import WALL_SHARE
from advisor.planning.jobs import Job, Template
from advisor.planning.progress import Progress
from advisor.situation import Situation, settle

SQUARED = ("square", "octagon")
KEPT_FORMS = ("segmented",)  # glue lines stay, whatever the shape
# Measured on the blank as it was; the first cut makes them untrue.
OF_THE_BLANK = ("mass", "radii", "radii_far_end", "offset", "balance_test", "axis_from_flat", "one_side_wet")
OF_THE_MOUNTING = ("overhang", "left_mounted", "steady")
OF_THE_CUT = ("force", "depth", "feed", "diameter", "wanted_rpm", "drill_diameter")


def sizes(situation: Situation) -> dict[str, float]:
    """Diameter in mm of the blank, of the round that is in it, and of the finished piece."""
    case, body = situation.case, situation.body
    cornered = situation.traits.form in SQUARED and not situation.trued
    round_ = body.end_diameter if cornered else case.work.diameter
    return {"blank": case.work.diameter, "round": round_, "finished": case.work.finished_diameter or round_}


def _without(case: Case, section: str, names: tuple[str, ...]) -> Case:
    part = getattr(case, section)
    return case.altered({section: part.altered(dict.fromkeys(names))})


def _work(case: Case, situation: Situation, job: Job, stage: Template, progress: Progress) -> dict[str, Any]:
    work, as_it_is = case.work, situation.traits
    changes: dict[str, Any] = {
        "state": stage.state,
        "grain": as_it_is.grain,
        "diameter": sizes(situation)[stage.size],
        "length": work.length * stage.share,
        "purpose": stage.purpose or (work.purpose if work.purpose not in (None, "other") else job.name),
    }
    if stage.form and as_it_is.form not in KEPT_FORMS:
        changes["form"] = stage.form
    if progress.dried:
        changes["moisture"] = "dry"
    return changes


def _seat(case: Case, stage: Template, progress: Progress) -> Case:
    """The tenon and the recess at the end that is gripped; none where the other end or a face is."""
    tenon, recess = progress.seats.get(stage.grips, (None, None))
    update: dict[str, Any] = {"tenon": tenon, "recess": recess}
    if stage.same and case.hold.drive is None:
        update["drive"] = progress.drive
    return case.altered({"hold": case.hold.altered(update)})


def stage_case(situation: Situation, job: Job, stage: Template, progress: Progress) -> Case:
    """The case of this stage, its hold left open."""
    case = situation.case
    changes = _work(case, situation, job, stage, progress)
    same_cut = case.cut.operation == stage.operation and progress.first
    found = case.altered({"work": case.work.altered(changes), "expect": None})
    found = changed(changed(found, "cut.operation", stage.operation), "hold.method", None)
    if not progress.first or stage.state != situation.traits.state:
        found = _without(_without(found, "work", OF_THE_BLANK), "hold", OF_THE_MOUNTING)
    if not same_cut:
        drill = case.cut.drill_diameter if stage.operation == "drilling" else None
        found = changed(_without(found, "cut", OF_THE_CUT), "cut.drill_diameter", drill)
    if stage.grips == "rim" and stage.makes:
        found = changed(found, "cut.diameter", _foot(progress, found))
    if stage.most_rpm is not None:
        found = _held_to(found, stage.most_rpm)
    if stage.tail:
        found = changed(changed(found, "hold.tail", None), "hold.tail.kind", "none")
    if progress.hollowed and found.work.mass is None:
        found = changed(found, "work.mass", settle(found).body.mass * hollow_share(found))
    return _seat(found, stage, progress)


def _held_to(case: Case, rpm: float) -> Case:
    """Belt or dial set to run no faster than this. Of the steps those stay that are slow enough, or the slowest."""
    machine = case.machine
    top = min(rpm, machine.max_rpm) if machine.max_rpm is not None else rpm
    found = changed(case, "machine.max_rpm", top)
    if machine.speeds:
        steps = tuple(step for step in machine.speeds if step <= top) or (min(machine.speeds),)
        found = changed(found, "machine.speeds", steps)
    return found


def hollow_share(case: Case) -> float:
    """What is left of a solid blank when it is hollow: a cup with the stated wall and floor.

    Both are a tenth of the diameter where nobody said. Straight sides hold more wood than a bowl's, so it errs on the
    heavy side. Source: geometry.
    """
    work = case.work
    wall = min(work.wall if work.wall is not None else WALL_SHARE * work.diameter, work.diameter / 2)
    floor = min(work.floor if work.floor is not None else wall, work.length)
    return 1 - (1 - 2 * wall / work.diameter) ** 2 * (1 - floor / work.length)


def _foot(progress: Progress, case: Case) -> float:
    """Diameter in mm of the grip that is trued: as it was cut, else as the trade would have cut it."""
    tenon: Tenon | None = progress.seats["foot"][0]
    cut = tenon.diameter if tenon is not None else None
    return min(cut if cut is not None else 0.4 * case.work.diameter, case.work.diameter)
