"""Whole jobs for the tests of the plan, each worked out once."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

import jsonschema

from advisor.planning import Plan, walk
from advisor.planning.answer import compose
from advisor.reading import read_case
from advisor.report.schema import answer_schema
from tests.rules.bench import words_of

SCHEMA = jsonschema.Draft202012Validator(answer_schema())
END_GRAIN = "SPINDLE; work.diameter=75mm"
JOBS = {
    "spindle": "SPINDLE",
    "handle": "SPINDLE; work.purpose=handle; work.diameter=45mm; work.length=250mm",
    "rod": "SPINDLE; work.purpose=rod; work.diameter=20mm; work.length=400mm",
    "knob": "KNOB",
    "bowl": "BOWL",
    "platter": "BOWL; work.purpose=platter; work.diameter=12in; work.length=30mm",
    "box": f"{END_GRAIN}; work.purpose=box; work.length=100mm",
    "hollow-form": "SPINDLE; work.purpose=hollow-form; work.diameter=6in; work.length=8in",
    "bush": "SPINDLE; work.purpose=bush; work.diameter=2in; work.length=3in",
    "ring": "DISC; work.purpose=ring; work.state=not-round; work.diameter=90mm; work.length=20mm",
    "sphere": f"{END_GRAIN}; work.purpose=sphere; work.length=120mm",
    "tube": "SPINDLE; work.purpose=tube; work.diameter=1in; work.length=5in",
    "disc": "DISC; work.purpose=disc; work.state=not-round; work.diameter=150mm; work.length=15mm",
}
PLATTER = JOBS["platter"]
SHOP = ", ".join(
    ["spur-drive", "square-socket-drive", "screw-chuck", "faceplate-screws", "jaws-on-tenon", "jaws-in-recess",
     "glue-block", "friction-block", "jam-chuck", "collet", "mandrel", "sphere-cups", "steady-rest", "tail-support"]
)  # fmt: skip
"""What a fair shop has; the whole list of methods is tried by the slow tests."""


@lru_cache(maxsize=128)
def plan_of(text: str) -> Plan:
    """The plan for one situation, written as `BASE; field=value; ...`, in the shop above unless it says another kit.

    `hold.kit=` means that no kit is given.
    """
    words = words_of(text)
    kit = [] if "hold.kit=" in text else [f"hold.kit=[{SHOP}]"]
    return walk(read_case(None, [*words, *kit]), changes=False)


@lru_cache(maxsize=128)
def answer_of(text: str) -> dict[str, Any]:
    """The answer composed of that plan."""
    return compose(plan_of(text))


def names(text: str) -> list[str]:
    """Its stages in order."""
    return [stage["name"] for stage in answer_of(text)["stages"]]


def holds(text: str) -> dict[str, str]:
    """Hold of every stage that is on the lathe."""
    return {stage.template.name: stage.method for stage in plan_of(text).stages if stage.method}


def stage(text: str, name: str) -> dict[str, Any]:
    """One stage of the answer."""
    return next(entry for entry in answer_of(text)["stages"] if entry["name"] == name)


def stopped(text: str) -> tuple[str, str]:
    """Where and why the plan stops; two empty words when it does not."""
    found = answer_of(text).get("stopped", {"stage": "", "fault": ""})
    return found["stage"], found["fault"]
