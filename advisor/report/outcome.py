"""What a person acts on, line by line, so that two answers can stand side by side."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from advisor.models.spoken import spoken
from advisor.report.numbers import force, limit_down

NONE = "none"


def outcome_lines(answer: Mapping[str, Any], units: str) -> dict[str, str]:
    """The lines of an answer by name; those of the parts that it has."""
    found = {"verdict": answer["verdict"].replace("-", " ")}
    for hold in answer.get("holding", ())[:1]:
        found["held by"] = f"{spoken(hold['method'])} ({hold['verdict'].replace('-', ' ')})"
    if "speed" in answer:
        found |= _speed(answer["speed"])
    if "thrust" in answer:
        found |= _thrust(answer["thrust"], units)
    return found


def _speed(speed: Mapping[str, Any]) -> dict[str, str]:
    governed = speed.get("governed_by")
    return {
        "start at": f"{limit_down(speed['start_rpm'])} rpm" if speed.get("start_rpm") else NONE,
        "never above": f"{limit_down(speed['ceiling_rpm'])} rpm ({governed})" if governed else NONE,
    }


def _thrust(thrust: Mapping[str, Any], units: str) -> dict[str, str]:
    found = {"tail thrust": "not used" if thrust["window"] == "not-used" else thrust["window"]}
    if "set_n" in thrust:
        found["thrust to set"] = force(thrust["set_n"], units, True, thrust["allowed_n"])
    if "allowed_n" in thrust:
        found["thrust at most"] = f"{force(thrust['allowed_n'], units, up=False)} ({thrust['governed_by']})"
    return found
