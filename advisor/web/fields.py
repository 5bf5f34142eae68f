"""The fields of the form, made from the case model, and which of them matter for a question."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from advisor.models.case import Case
from advisor.models.fields import Shape, Spec, specs
from advisor.models.section import Section
from advisor.web.labels import ALWAYS, BEHIND, FIRST, GROUPS, LABELS

NEEDED = ("work.material", "work.diameter", "work.length")


@dataclass(frozen=True)
class Field:
    """One field: its dotted name, what stands beside it, how it is filled in."""

    name: str
    group: str
    label: str
    about: str
    shape: str
    words: tuple[str, ...]
    example: str
    needed: bool


def _shape(spec: Spec) -> str:
    if spec.shape is Shape.LIST and spec.item is not None and spec.item.shape is Shape.WORD:
        return "several"
    return {Shape.WORD: "word", Shape.FLAG: "word"}.get(spec.shape, "text")


def _words(spec: Spec) -> tuple[str, ...]:
    if spec.shape is Shape.FLAG:
        return ("yes", "no")
    return spec.item.words if spec.item is not None else spec.words


def _example(spec: Spec) -> str:
    inner = spec.item or spec
    if inner.quantity is None:
        return "several with commas between" if spec.item is not None else ""
    if spec.shape is Shape.COUNT:
        return "a whole number"
    examples = re.split(r",? or |, ", inner.quantity.kind.example)
    told = " or ".join(dict.fromkeys((examples[0], spec.words[0] if spec.words else examples[-1])))
    if inner.shape is Shape.PAIR:
        return "position:diameter, several with commas between, like 0mm:40mm, 100mm:25mm"
    if spec.item is not None:
        return f"several with commas between, each like {told}"
    return f"like {told}"


def _fields(model: type[Section], above: str) -> Iterable[Field]:
    for name, spec in specs(model).items():
        full = f"{above}{name}"
        if spec.section is not None:
            yield from _fields(spec.section, f"{full}.")
            continue
        group, *path = full.split(".")
        label = LABELS.get(full, ": ".join(part.replace("_", " ") for part in path).capitalize())
        about = model.declared[name].description or ""
        yield Field(full, group, label, about, _shape(spec), _words(spec), _example(spec), full in NEEDED)


@lru_cache(maxsize=1)
def form_fields() -> tuple[Field, ...]:
    """Every field of the five sections in the order of the model, those of every question first."""
    sections = ((name, specs(Case)[name].section) for name in GROUPS)
    found = [entry for name, model in sections if model is not None for entry in _fields(model, f"{name}.")]
    return tuple(sorted(found, key=lambda entry: ALWAYS.index(entry.name) if entry.name in ALWAYS else len(ALWAYS)))


def _of_limits(part: Mapping[str, Any]) -> Iterable[str]:
    """The fields behind the limit that decides and the next one."""
    for key in ("governed_by", "runner_up"):
        yield from BEHIND.get(part.get(key, ""), ())


def matters(ask: str, typed: Iterable[str], found: Mapping[str, Any] | None) -> set[str]:
    """The fields to show: those of the question, all that were filled in, and those that could change this answer."""
    shown = {*ALWAYS, *FIRST[ask], *typed}
    if found is not None:
        answer = found["answer"]
        shown.update(found["opens"])
        assumed = {entry["field"] for entry in answer["assumed"]}
        limits = {*_of_limits(answer.get("speed", {})), *_of_limits(answer.get("thrust", {}))}
        shown.update(name for name in assumed if name in limits or name.startswith("work."))
    return {entry.name for entry in form_fields() if entry.name in shown}
