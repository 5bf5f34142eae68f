"""A plan as pages, one for each stage: its answer where it is on the lathe, else what is done meanwhile."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from advisor.planning import Plan, Stage
from advisor.report.plan import leave_texts, pause_texts
from advisor.report.sheet.clean import clean
from advisor.report.sheet.compose import drawing_of, foot, page_of
from advisor.report.sheet.page import Page, Section
from advisor.report.words import HEADLINE


def stage_pages(plan: Plan, answer: Mapping[str, Any], name: str, units: str, made: str) -> list[Page]:
    """The pages of a plan and of the answer made from it."""
    told = answer["stages"]
    return [
        _page(stage, part, f"{name}: {number} of {len(told)}, {part['name']}", units, made)
        for number, (stage, part) in enumerate(zip(plan.stages, told, strict=True), 1)
    ]


def _page(stage: Stage, part: Mapping[str, Any], name: str, units: str, made: str) -> Page:
    if stage.case is None or stage.answer is None:
        return _without_answer(stage, part, name, units, made)
    leave = [f"leave {text}" for text in leave_texts(part, units)]
    doing = Section("This stage", tuple(clean(text) for text in (part["does"], *leave)))
    return page_of(stage.case, {**stage.answer, "checks": part["checks"]}, name, units, made, (doing,))


def _without_answer(stage: Stage, part: Mapping[str, Any], name: str, units: str, made: str) -> Page:
    """A pause, bench work, or the stage at which the plan stops."""
    fault = stage.fault
    passed = tuple(clean(entry["text"]) for entry in part.get("passed_over", ()))
    sections = [
        Section("This stage", tuple(clean(text) for text in (part["does"], *pause_texts(part, units)))),
        Section("To check", tuple(clean(text) for text in part["checks"]), boxes=True),
    ]
    if passed:
        sections.append(Section("What was passed over", passed, may_be_cut=True))
    drawing = None
    if stage.case is not None:
        drawing = drawing_of(stage.case, {"verdict": part["verdict"]}, units)
    return Page(
        name=clean(name),
        made=made,
        verdict=part["verdict"],
        headline=HEADLINE[part["verdict"]] if fault is not None else f"{part['name'].upper()}.",
        reason=clean(fault.text) if fault is not None else clean(part["does"]),
        remedy=clean(fault.do) if fault is not None else "",
        speeds=(),
        hold=(),
        facts=(),
        drawing=drawing,
        sections=tuple(sections),
        foot=foot(made),
        units=units,
    )
