"""JSON Schema of a case and of an answer."""

from __future__ import annotations

from typing import Any

from advisor import verdicts
from advisor.models.case import METHODS

NUMBER = {"type": "number"}
TEXT = {"type": "string"}
TEXTS = {"type": "array", "items": TEXT}
GRADES = {"enum": ["calculated", "estimate", "rough-guide", "practice"]}


def _object(required: dict[str, Any], optional: dict[str, Any] | None = None) -> dict[str, Any]:
    return {
        "type": "object",
        "properties": {**required, **(optional or {})},
        "required": list(required),
        "additionalProperties": False,
    }


def _list(item: dict[str, Any]) -> dict[str, Any]:
    return {"type": "array", "items": item}


def _limit(unit: str) -> dict[str, Any]:
    return _object({"name": TEXT, unit: NUMBER, "grade": GRADES, "formula": TEXT, "source": TEXT, "why": TEXT})


def _holding() -> dict[str, Any]:
    margin = _object({"name": TEXT, "have": NUMBER, "need": NUMBER, "unit": TEXT, "ratio": NUMBER, "grade": GRADES})
    return _object(
        {
            "method": {"enum": list(METHODS)},
            "verdict": {"enum": list(verdicts.HOLD)},
            "rank": {"type": "integer", "minimum": 1},
            "margins": _list(margin),
            "grounds": _list(_object({"rule": TEXT, "text": TEXT})),
            "would_change": TEXTS,
            "sizes": {"type": "object", "additionalProperties": NUMBER},
            "tail": {"enum": ["up", "away"]},
        },
        {"low": NUMBER, "typical_over_divisor": NUMBER, "proportions": _proportions()},
    )


def _proportions() -> dict[str, Any]:
    size = _object(
        {"name": TEXT, "value": NUMBER, "unit": {"enum": ["mm", ""]}, "given": {"type": "boolean"}, "why": TEXT},
        {"least": NUMBER, "most": NUMBER},
    )
    check = _object({"name": TEXT, "have": NUMBER, "need": NUMBER, "unit": TEXT, "grade": GRADES})
    return _object(
        {"sizes": _list(size), "checks": _list(check), "notes": TEXTS},
        {
            "enough": {"type": "boolean"},
            "margin": NUMBER,
            "gives_first": TEXT,
            "jaw_circle": _object({"margin_on": NUMBER, "margin_off": NUMBER}, {"diameter_mm": NUMBER}),
            "drying": _object({"oval_mm": NUMBER, "leave_mm": NUMBER}, {"loosens_percent": NUMBER}),
        },
    )


def _drying() -> dict[str, Any]:
    numbers = ("from_percent", "to_percent", "shrinks_most_percent", "shrinks_least_percent", "diameter_mm", "oval_mm")
    walls = ("wall_mm", "wall_of_oval_mm", "finished_wall_mm")
    return _object(
        {**dict.fromkeys(numbers, NUMBER), "woods": TEXT, "filled": {"type": "boolean"}},
        dict.fromkeys(walls, NUMBER),
    )


def _balance() -> dict[str, Any]:
    move = _object(
        {"end": {"enum": ["near", "far", "both"]}, "distance_mm": NUMBER, "remains_mm": NUMBER, "text": TEXT},
        {"direction_deg": NUMBER, "swing_mm": NUMBER},
    )
    return _object(
        {
            "mass_kg": NUMBER,
            "offset_mm": NUMBER,
            "shift_mm": NUMBER,
            "counterweight_g": NUMBER,
        },
        {
            "static_mm": NUMBER,
            "couple_kg_mm2": NUMBER,
            "moves": _list(move),
            "counterweight_radius_mm": NUMBER,
            "counterweight_deg": NUMBER,
            "counterweight_pull_n": NUMBER,
            "counterweight_must_hold_n": NUMBER,
            "counterweight_bolts": {"type": "integer", "minimum": 2},
            "counterweight_couple_kg_mm2": NUMBER,
        },
    )


def _speed() -> dict[str, Any]:
    rung = _object(
        {
            "radius_removed_mm": NUMBER,
            "offset_mm": NUMBER,
            "ceiling_rpm": NUMBER,
            "governed_by": TEXT,
            "diameter_mm": NUMBER,
            "state": TEXT,
        }
    )
    step = _object({"when": TEXT, "rpm": NUMBER, "check": TEXT, "energy_j": NUMBER})
    return _object(
        {"ceiling_rpm": NUMBER, "limits": _list(_limit("rpm")), "would_change": TEXTS},
        {
            "start_rpm": NUMBER,
            "governed_by": TEXT,
            "runner_up": TEXT,
            "steps": _list(step),
            "whip_rpm": {"type": "array", "items": NUMBER, "minItems": 2, "maxItems": 2},
            "energy_j": NUMBER,
            "rim_m_per_s": NUMBER,
            "ladder": _list(rung),
            "balance": _balance(),
            "spread": _spread(),
        },
    )


def _spread() -> dict[str, Any]:
    """How far the limits range over the scatter of what goes into them."""
    count = {"type": "integer", "minimum": 0}
    mover = _object({"name": TEXT, "share": NUMBER, "rank_correlation": NUMBER})
    rates = {f"{name}_rpm": NUMBER for name in ("answer", "p5", "p50", "p95")}
    ends = {"name": TEXT, "low": NUMBER, "typical": NUMBER, "high": NUMBER, "unit": TEXT, "basis": TEXT}
    return _object(
        {
            "seed": count,
            "samples": count,
            "inputs": _list(_object(ends)),
            "limits": _list(_object({"name": TEXT, **rates, "inputs": _list(mover)})),
            "not_drawn": TEXTS,
        }
    )


def _thrust() -> dict[str, Any]:
    return _object(
        {
            "window": {"enum": ["open", "narrow", "empty", "not-used"]},
            "limits": _list(_limit("n")),
            "would_change": TEXTS,
        },
        {
            "needed_n": NUMBER,
            "allowed_n": NUMBER,
            "set_n": NUMBER,
            "handwheel_nm": NUMBER,
            "handwheel_rim_n": NUMBER,
            "handwheel_most_nm": NUMBER,
            "handwheel_gives_n": {"type": "array", "items": NUMBER, "minItems": 2, "maxItems": 2},
            "press_in_n": NUMBER,
            "press_in_allowed_n": NUMBER,
            "governed_by": TEXT,
            "runner_up": TEXT,
            "seat_depth_mm": NUMBER,
            "pressed_only_n": NUMBER,
            "light_cuts_n": NUMBER,
            "taper_slips_nm": NUMBER,
            "slip_nm": {"type": "array", "items": NUMBER, "minItems": 2, "maxItems": 2},
        },
    )


def _pause() -> dict[str, Any]:
    """What drying does; empty where nobody can say."""
    numbers = ("oval_mm", "shrinks_percent", "from_percent", "to_percent", "wall_mm", "finished_mm", "diameter_mm")
    return _object({}, {**dict.fromkeys(numbers, NUMBER), "wood": TEXT})


def _stage() -> dict[str, Any]:
    """One stage of a plan; a pause and work at the bench have no hold and no speed."""
    free = {"type": "object"}
    leave = _object(
        {"what": TEXT, "end": {"enum": ["foot", "top"]}, "for": TEXT, "hold": {"enum": list(METHODS)}},
        {f"{name}_mm": NUMBER for name in ("diameter", "length", "depth", "shoulder_diameter", "circle", "wall")},
    )
    return _object(
        {
            "name": TEXT,
            "kind": {"enum": ["lathe", "pause", "bench"]},
            "verdict": {"enum": list(verdicts.MOUNT)},
            "does": TEXT,
            "checks": TEXTS,
        },
        {
            "operation": TEXT,
            "diameter_mm": NUMBER,
            "length_mm": NUMBER,
            "holding": _list(_holding()),
            "passed_over": _list(_object({"method": {"enum": list(METHODS)}, "fault": TEXT, "text": TEXT})),
            "reasons": _list(_reason()),
            "speed": _speed(),
            "thrust": _thrust(),
            "centers": free,
            "tool": free,
            "leave": _list(leave),
            "pause": _pause(),
        },
    )


def _reason() -> dict[str, Any]:
    return _object({"rule": TEXT, "text": TEXT, "basis": TEXT, "do": TEXT})


def answer_schema() -> dict[str, Any]:
    """JSON Schema of an answer, draft 2020-12."""
    free = {"type": "object"}
    plan = {
        "job": _object({"name": TEXT, "title": TEXT, "assumed": {"type": "boolean"}}),
        "stages": {**_list(_stage()), "minItems": 1},
        "stopped": _object({"stage": TEXT, "fault": TEXT, "text": TEXT, "do": TEXT}),
    }
    schema = _object(
        {
            "schema": {"const": "1"},
            "verdict": {"enum": list(verdicts.MOUNT)},
            "reasons": _list(_reason()),
            "cautions": {**_list(_object({"text": TEXT, "rule": TEXT, "basis": TEXT})), "minItems": 1},
            "checks": TEXTS,
            "notes": TEXTS,
            "fired": TEXTS,
            "assumed": _list(_object({"field": TEXT, "value": TEXT, "why": TEXT})),
            "could_not_check": _list(_object({"what": TEXT, "missing": TEXT})),
        },
        {
            "holding": _list(_holding()),
            "speed": _speed(),
            "thrust": _thrust(),
            "centers": free,
            "tool": free,
            "drying": _drying(),
            **plan,
        },
    )
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", "title": "answer", **schema}


def schemas() -> dict[str, Any]:
    """Both schemas by name."""
    from advisor.models.schema import case_schema

    return {"case": case_schema(), "answer": answer_schema()}
