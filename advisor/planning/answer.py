"""A plan -> the answer of the interface: the stages, the worst of their verdicts, and what they have in common once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from advisor import verdicts
from advisor.advice.answer import SCHEMA, one_hold
from advisor.engine import Fires
from advisor.models.case import Case
from advisor.planning.jobs import BENCH, PAUSE
from advisor.planning.leave import leave
from advisor.planning.pause import pause
from advisor.planning.stage import Plan, Stage
from advisor.planning.walk import walk
from advisor.sources import source

PRACTICE = "common-practice"
LATHE = "lathe"
OF_A_STAGE = ("reasons", "speed", "thrust", "centers", "tool")


def _verdict(stage: Stage) -> str:
    if stage.answer is not None:
        return str(stage.answer["verdict"])
    if stage.fault is None:
        return "go"
    return "do-not-mount" if stage.limited else "ask-first"


def _kind(stage: Stage) -> str:
    return stage.template.operation if stage.template.operation in (PAUSE, BENCH) else LATHE


def _holding(stage: Stage) -> list[dict[str, Any]]:
    """The hold of this stage as `advise` judges it; where the plan stops, the holds that were tried."""
    if stage.answer is not None:
        return [hold for hold in stage.answer["holding"] if hold["rank"] == 1]
    entries = (one_hold(hold, rank, ()) for rank, hold in enumerate(stage.judged, 1))
    return [{key: value for key, value in entry.items() if value is not None} for entry in entries]


def _on_the_lathe(stage: Stage) -> dict[str, Any]:
    assert stage.case is not None
    work = stage.case.work
    found: dict[str, Any] = {
        "operation": stage.template.operation,
        "diameter_mm": work.diameter,
        "length_mm": work.length,
        "holding": _holding(stage),
        "passed_over": [{"method": name, "fault": fault.name, "text": fault.text} for name, fault in stage.rejected],
    }
    if stage.answer is not None:
        found |= {key: stage.answer[key] for key in OF_A_STAGE}
    return found


def _stage(plan: Plan, place: int) -> dict[str, Any]:
    stage = plan.stages[place]
    checks = [stage.template.check]
    found: dict[str, Any] = {
        "name": stage.template.name,
        "kind": _kind(stage),
        "verdict": _verdict(stage),
        "does": stage.template.does,
    }
    if stage.template.on_the_lathe:
        found |= _on_the_lathe(stage)
        checks += stage.answer["checks"] if stage.answer is not None else []
    if stage.template.operation == PAUSE:
        found["pause"] = pause(plan, stage.template.when, plan.stages[:place])
    if stage.fault is None:
        found["leave"] = list(leave(plan.stages, place))
    found["checks"] = list(dict.fromkeys(checks))
    return found


def _stop(plan: Plan) -> dict[str, Any] | None:
    stage = plan.stopped
    if stage is None or stage.fault is None:
        return None
    fault = stage.fault
    return {"stage": stage.template.name, "fault": fault.name, "text": fault.text, "do": fault.do}


def _at(numbers: Sequence[int], all_: int) -> str:
    """Which stages a reason is about; nothing when it is all of them."""
    if len(numbers) == all_:
        return ""
    return f"Stage{'s' if len(numbers) > 1 else ''} {', '.join(map(str, numbers))}: "


def _stop_reason(plan: Plan, stop: Mapping[str, Any]) -> dict[str, Any]:
    text = f"The plan stops at stage {len(plan.stages)}, {stop['stage']}: {stop['text']}"
    return {"rule": stop["fault"], "text": text, "basis": source(PRACTICE).title, "do": stop["do"]}


def _reasons(plan: Plan) -> list[dict[str, Any]]:
    """Why the verdict: what stops the plan, then the reasons of the worst stages first, each once with its stages.

    What is worse about the piece itself than the hold it lacks comes before the stop.
    """
    stop = _stop(plan)
    numbered = [(number, stage.answer) for number, stage in enumerate(plan.stages, 1) if stage.answer is not None]
    numbers: dict[str, list[int]] = {}
    for number, answer in numbered:
        for reason in answer["reasons"]:
            numbers.setdefault(reason["text"], []).append(number)
    worst = sorted(plan.answers, key=lambda answer: -verdicts.MOUNT.index(answer["verdict"]))
    told = {reason["text"]: reason for answer in worst for reason in answer["reasons"]}
    if stop is not None:
        told.pop(stop["text"], None)
    found = [{**one, "text": _at(numbers.get(text, []), len(numbered)) + text} for text, one in told.items()]
    if stop is None:
        return found
    piece = verdicts.MOUNT.index(plan.piece["verdict"]) if plan.piece is not None else 0
    first = verdicts.MOUNT.index(_verdict(plan.stages[-1])) >= piece
    return [_stop_reason(plan, stop), *found] if first else [*found, _stop_reason(plan, stop)]


def _slowest_first(answers: Sequence[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    """A caution with a speed in it is told for the slowest stage first: it then holds for all of them."""
    return sorted(answers, key=lambda answer: float(answer.get("speed", {}).get("ceiling_rpm", 0.0)))


def _together(answers: Sequence[Mapping[str, Any]], key: str, by: str) -> list[dict[str, Any]]:
    """The entries of all stages, each once by its text or field."""
    first: dict[str, dict[str, Any]] = {}
    for answer in answers:
        for entry in answer[key]:
            first.setdefault(entry[by], entry)
    return list(first.values())


def _assumed(plan: Plan, answers: Sequence[Mapping[str, Any]]) -> list[dict[str, Any]]:
    own = [{"field": "work.purpose", "value": plan.job.name, "why": plan.assumed}] if plan.assumed else []
    given = plan.situation.case.work.mass
    masses = [stage.case.work.mass for stage in plan.stages if stage.case is not None and stage.case.work.mass != given]
    if masses and masses[-1] is not None:
        why = "a straight-sided cup with the wall and floor stated, a tenth of the diameter where nobody said"
        own.append({"field": "work.mass when hollow", "value": f"{masses[-1]:.2g} kg", "why": why})
    return [*own, *_together(answers, "assumed", "field")]


def _gaps(plan: Plan) -> list[dict[str, Any]]:
    """What no stage can know of itself: thrust on a piece turned about goes through its hollow."""
    pressed = [
        stage.template.name
        for stage in plan.stages
        if stage.answer is not None and stage.template.grips == "rim" and stage.answer["thrust"]["window"] != "not-used"
    ]
    if not pressed:
        return []
    missing = (
        f"no model for wall and floor under the tail center ({', '.join(pressed)}): feel for it, with the least thrust"
    )
    return [{"what": "thrust on a hollow piece", "missing": missing}]


def compose(plan: Plan) -> dict[str, Any]:
    """The answer of the interface with its stages; the verdict is the worst of theirs."""
    answers = plan.answers
    own = [answer["verdict"] for answer in answers]
    stages = [_stage(plan, place) for place in range(len(plan.stages))]
    answer: dict[str, Any] = {
        "schema": SCHEMA,
        "verdict": verdicts.worst(verdicts.MOUNT, [*own, *(stage["verdict"] for stage in stages)]),
        "reasons": _reasons(plan),
        "job": {"name": plan.job.name, "title": plan.job.title, "assumed": bool(plan.assumed)},
        "stages": stages,
        "cautions": _together(_slowest_first(answers), "cautions", "text"),
        "checks": [],
        "notes": list(dict.fromkeys(note for found in answers for note in found["notes"])),
        "fired": list(dict.fromkeys(rule for found in answers for rule in found["fired"])),
        "assumed": _assumed(plan, answers),
        "could_not_check": [*_gaps(plan), *_together(answers, "could_not_check", "what")],
    }
    stop = _stop(plan)
    return answer if stop is None else {**answer, "stopped": stop}


def plan_answer(case: Case, engine: Fires | None = None) -> dict[str, Any]:
    """Plan a case and compose its answer."""
    return compose(walk(case, engine))
