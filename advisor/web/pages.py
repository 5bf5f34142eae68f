"""Templates filled in: the whole page, the answer alone, a page of explanation, the path to an unknown material."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from functools import lru_cache
from importlib.resources import files
from typing import Any

from jinja2 import Environment, FunctionLoader

from advisor.models.questions import End, step
from advisor.models.questions import Question as Step
from advisor.models.spoken import spoken
from advisor.report import numbers
from advisor.report import sentences as say
from advisor.report.words import HEADLINE, WINDOW_WORDS
from advisor.web.asked import ASKS, Question
from advisor.web.compared import Comparison
from advisor.web.fields import Field, form_fields, matters
from advisor.web.labels import GROUPS

HERE = files("advisor.web")
SIGNS = {"go": "✓", "go-with-care": "!", "ask-first": "?", "do-not-mount": "✕"}
HOLDS, ALL_HOLDS = 5, 12
DOWNLOADS = (
    ("/sheet.pdf", "Sheet to pin up (PDF)"),
    ("/sheet.html", "Sheet (HTML)"),
    ("/sheet.svg", "Sheet (SVG)"),
    ("/case.yaml", "Case (YAML)"),
    ("/answer.json", "Answer (JSON)"),
)
SHORTEST_BAR, WHOLE_BAR = 12.0, 100.0


def bars(limits: Sequence[Mapping[str, Any]], key: str) -> list[tuple[Mapping[str, Any], float]]:
    """Every limit with the length of its bar in percent, on a logarithmic scale."""
    if not limits:
        return []
    logs = [math.log10(limit[key] + 1) for limit in limits]
    span = max(max(logs) - min(logs), 0.3)
    scale = (WHOLE_BAR - SHORTEST_BAR) / span
    return [
        (limit, round(SHORTEST_BAR + scale * (log - min(logs)), 1)) for limit, log in zip(limits, logs, strict=True)
    ]


def several_figures(value: float) -> str:
    """Three figures, as a person writes them."""
    return f"{value:,.3g}" if abs(value) < 1000 else f"{value:,.0f}"


def field_label(name: str) -> str:
    """A field's label; a name that is no field, as words."""
    labels = {entry.name: entry.label for entry in form_fields()}
    return labels.get(name, name.replace(".", ": ").replace("_", " "))


@lru_cache(maxsize=1)
def _templates() -> Environment:
    found = Environment(
        loader=FunctionLoader(lambda name: (HERE / "templates" / name).read_text(encoding="utf-8")),
        autoescape=True,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    found.filters |= {
        "limit_down": numbers.limit_down,
        "force": numbers.force,
        "torque": numbers.torque,
        "size": numbers.length,
        "energy": numbers.energy,
        "plain": spoken,
        "tool_text": say.tool_text,
        "figures": several_figures,
        "field_label": field_label,
    }
    found.globals |= {"bars": bars, "headline": HEADLINE, "sign": SIGNS, "window_words": WINDOW_WORDS, "asks": ASKS}
    found.globals["say"] = say
    return found


def answer_html(question: Question, found: Mapping[str, Any] | None, compared: Comparison | None) -> str:
    """The answer, or what is still needed for one."""
    return _templates().get_template("answer.html").render(
        found=found, compared=compared, missing=not question.typed, holds=ALL_HOLDS if question.ask == "hold" else HOLDS
    )  # fmt: skip


def headline_of(found: Mapping[str, Any] | None) -> str:
    """The answer in one line, for a narrow screen and for whoever listens to the page."""
    if found is None:
        return ""
    answer = found["answer"]
    told = HEADLINE[answer["verdict"]]
    rate = answer.get("speed", {})
    if rate.get("start_rpm"):
        top = numbers.limit_down(rate["ceiling_rpm"])
        told += f" Start {numbers.limit_down(rate['start_rpm'])} rpm, never above {top}."
    thrust = answer.get("thrust", {})
    if "set_n" in thrust:
        told += f" Thrust {numbers.force(thrust['set_n'], found['units'], True, thrust['allowed_n'])}."
    return told


def by_field(problems: Sequence[Mapping[str, Any]]) -> dict[str, list[str]]:
    """What is wrong, for each field in words; what belongs to none under the empty name."""
    known = {entry.name for entry in form_fields()} | {"title", "units"}
    told: dict[str, list[str]] = {}
    for problem in problems:
        said = problem["message"][:1].upper() + problem["message"][1:] + "."
        accepted = f" Accepted: {problem['accepted']}." if problem["accepted"] else ""
        nearest = f" Did you mean {problem['nearest']}?" if problem["nearest"] else ""
        names = [name for name in problem["field"].split(" and ") if name in known]
        head = "" if names else f"{problem['field']}: " if problem["field"] else ""
        for name in names or [""]:
            told.setdefault(name, []).append(f"{head}{said}{accepted}{nearest}")
    return told


def assumed_values(found: Mapping[str, Any] | None) -> dict[str, str]:
    """What was taken for the fields that nobody filled in."""
    known = {entry.name for entry in form_fields()}
    if found is None:
        return {}
    entries = [entry for entry in found["answer"]["assumed"] if entry["field"] in known]
    return {entry["field"]: numbers.assumed_value(entry["value"], found["units"]) for entry in entries}


def _grouped(shown: set[str]) -> list[tuple[str, str, list[Field], list[Field]]]:
    groups = []
    for key, title in GROUPS.items():
        own = [entry for entry in form_fields() if entry.group == key]
        groups.append(
            (key, title, [one for one in own if one.name in shown], [one for one in own if one.name not in shown])
        )
    return groups


def shown_fields(question: Question, found: Mapping[str, Any] | None) -> set[str]:
    """The fields in the open part of the form."""
    return {entry.name for entry in form_fields()} if question.everything else matters(
        question.ask, question.typed, found
    )  # fmt: skip


def page_html(
    question: Question,
    found: Mapping[str, Any] | None,
    problems: Mapping[str, list[str]],
    compared: Comparison | None,
    before: str,
) -> str:
    """The whole page."""
    return _templates().get_template("page.html").render(
        question=question,
        found=found,
        problems=problems,
        answer=answer_html(question, found, compared),
        line=headline_of(found),
        groups=_grouped(shown_fields(question, found) | set(problems)),
        assumed=assumed_values(found),
        materials=_materials(),
        before=before,
        downloads=DOWNLOADS,
        order=[entry.name for entry in form_fields()],
    )  # fmt: skip


@lru_cache(maxsize=1)
def _materials() -> tuple[str, ...]:
    """Names to choose from: woods, then everything else."""
    from advisor.models.material import list_materials
    from advisor.models.wood import list_species

    return tuple(
        dict.fromkeys(
            [str(entry["title"]) for entry in list_species()] + [str(entry["name"]) for entry in list_materials()]
        )
    )


def explain_html(name: str, text: str) -> str:
    """One name in plain words."""
    return _templates().get_template("explain.html").render(name=name, text=text)


def path_html(step_id: str) -> str:
    """One step of the way from "I do not know what this is". Raises KeyError for a step that is none."""
    here = step(step_id)
    question = here if isinstance(here, Step) else None
    end = here if isinstance(here, End) else None
    return _templates().get_template("path.html").render(question=question, end=end)
