"""A plan as a person reads it at the lathe: verdict, one reason, then a short block for each stage."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from advisor.models.spoken import spoken
from advisor.report.numbers import assumed_value, length
from advisor.report.terminal import Line, doing, wrapped
from advisor.report.words import HEADLINE

CHECKS_A_STAGE = 4
PASSED_OVER = 4
FASTENED = frozenset({"plate", "face"})  # sizes that only screwed holds have
SIZES = {
    "diameter_mm": "{} across",
    "length_mm": "{} long",
    "depth_mm": "{} deep",
    "shoulder_diameter_mm": "its shoulder flat to {}",
    "circle_mm": "on a circle of {}",
    "wall_mm": "{} of wood round it at least",
}


def _sizes(entry: Mapping[str, Any], units: str) -> str:
    found = [form.format(length(entry[name], units)) for name, form in SIZES.items() if name in entry]
    return ", ".join(found)


def leave_texts(stage: Mapping[str, Any], units: str) -> list[str]:
    """What this stage leaves standing for a later one."""
    found = []
    for entry in stage.get("leave", ()):
        sizes = _sizes(entry, units)
        told = f"{entry['what']}{', ' + sizes if sizes else ''}"
        found.append(f"at the {entry['end']} a {told} (for: {entry['for']})")
    return found


def screw_texts(stage: Mapping[str, Any], units: str) -> list[str]:
    """The screws of a screwed hold, as it was judged."""
    sizes: Mapping[str, float] = next((hold["sizes"] for hold in stage.get("holding", ())), {})
    if not FASTENED & set(sizes):
        return []
    depth = f"{length(sizes['diameter'], units)} thick, {length(sizes['length'], units)} into the work"
    if "plate" in sizes:
        return [f"{sizes['count']:.0f} of them, {depth}, on a circle of {length(sizes['circle'], units)}"]
    return [f"one, {depth}"]


def pause_texts(stage: Mapping[str, Any], units: str) -> list[str]:
    """How thick to leave it over a drying pause, and how it comes back."""
    part = stage.get("pause")
    if not part:
        return []
    texts = []
    if "wall_mm" in part:
        texts.append(f"leave wall and floor {length(part['wall_mm'], units)} thick, the same all round")
    if "diameter_mm" in part:
        finished = length(part["finished_mm"], units)
        texts.append(f"leave it {length(part['diameter_mm'], units)} across or more for a finished {finished}")
    moistures = f"{part['from_percent']:.0f} to {part['to_percent']:.0f} %"
    oval = f"expect it {length(part['oval_mm'], units)} out of round"
    shrinks = f"shrinks {part['shrinks_percent']:.1f} % one way and less the other"
    texts.append(f"{part['wood']} dried from {moistures} {shrinks}: {oval}")
    return texts


def _told(texts: Iterable[str], lead: str) -> Iterator[Line]:
    for number, text in enumerate(texts):
        yield from wrapped(text, f"  {lead:<9}" if number == 0 else " " * 11, "do", 11)


def _checks(stage: Mapping[str, Any], said: set[str]) -> Iterator[Line]:
    new = {_gist(text): text for text in reversed(stage["checks"])}
    shown = [text for gist, text in reversed(new.items()) if gist not in said]
    said.update(new)
    for number, text in enumerate(shown[:CHECKS_A_STAGE]):
        yield from wrapped(text, "  Check    - " if number == 0 else "           - ", hang=13)


def _new(texts: Iterable[str], said: set[str]) -> list[str]:
    """What was not told at a stage before."""
    found = [text for text in texts if text not in said]
    said.update(found)
    return found


def _gist(text: str) -> str:
    """An instruction up to its first number: told once, its later numbers stand in the lines of their stage."""
    return re.split(r"\d", text, maxsplit=1)[0]


def _stage(number: int, stage: Mapping[str, Any], units: str, said: set[str]) -> Iterator[Line]:
    yield Line("")
    size = f"  ({length(stage['diameter_mm'], units)} across)" if "diameter_mm" in stage else ""
    verdict = "" if stage["kind"] != "lathe" else f"  {HEADLINE[stage['verdict']]}"
    yield Line(f"{number}. {stage['name'].capitalize()}{size}{verdict}", "title")
    yield from wrapped(stage["does"], "  Do       ", hang=11)
    if "speed" in stage and stage["verdict"] != "do-not-mount":
        yield from doing(stage, units)
        yield from _told(_new(screw_texts(stage, units), said), "Screws")
    yield from _told(pause_texts(stage, units), "Dry")
    yield from _told(leave_texts(stage, units), "Leave")
    yield from _checks(stage, said)


def _passed_over(stage: Mapping[str, Any]) -> Iterator[Line]:
    for entry in stage.get("passed_over", ())[:PASSED_OVER]:
        yield from wrapped(f"{spoken(entry['method'])}: {entry['text']}", "           - ", "quiet", 13)


def _bullets(title: str, texts: Iterable[str], role: str = "text") -> Iterator[Line]:
    found = list(texts)
    if found:
        yield Line("")
        yield Line(title, "title")
    for text in found:
        yield from wrapped(text, "  - ", role, 4)


def _head(answer: Mapping[str, Any], title: str) -> Iterator[Line]:
    count = len(answer["stages"])
    told = f"stops at stage {count}" if "stopped" in answer else f"{count} stage{'s' if count > 1 else ''}"
    yield Line(f"{HEADLINE[answer['verdict']]}  {title}: {answer['job']['title']}, {told}", answer["verdict"])
    for reason in answer["reasons"][:1]:
        yield from wrapped(reason["text"], "  ", "reason", 2)
        if reason["do"] and reason["do"] not in reason["text"]:
            yield from wrapped(reason["do"], "  -> ", "do", 5)


def plan_lines(answer: Mapping[str, Any], title: str, units: str) -> Iterator[Line]:
    """The plan as lines: verdict and reason, the stages, then what they have in common, once."""
    yield from _head(answer, title)
    said: set[str] = set()
    for number, stage in enumerate(answer["stages"], 1):
        yield from _stage(number, stage, units, said)
    if "stopped" in answer:
        yield from wrapped(answer["stopped"]["text"], "  Stop     ", "caution", 11)
        yield from _passed_over(answer["stages"][-1])
    yield from _bullets("Cautions", _once(answer["cautions"]), "caution")
    yield from _bullets("Also", (reason["text"] for reason in answer["reasons"][1:]))
    assumed = "; ".join(f"{entry['field']} = {assumed_value(entry['value'], units)}" for entry in answer["assumed"])
    yield from _bullets("Nobody said, so assumed", [assumed] if assumed else [], "quiet")
    gaps = (f"{entry['what']}: {entry['missing']}" for entry in answer["could_not_check"])
    yield from _bullets("Could not be checked", gaps, "quiet")
    yield Line("")
    yield from wrapped(
        "The order of the stages is common practice, no source. Ask `advisor advise` for one stage with its limits. "
        "Local codes and licensed practice govern where they say more.",
        "",
        "quiet",
    )


def _once(cautions: Iterable[Mapping[str, Any]]) -> Iterator[str]:
    """The cautions, one of each rule: the same caution comes with another number at another stage."""
    first: dict[str, str] = {}
    for entry in cautions:
        first.setdefault(entry["rule"], entry["text"])
    return iter(first.values())
