"""The sizes of a hold and what drying does to them -> the answer of the interface: plain dictionaries, unrounded."""

from __future__ import annotations

import math
from typing import Any

from advisor.advice.advise import Advice
from advisor.advice.judge import JudgedHold
from advisor.reckoning.drying import Drying, drying, grip_drying
from advisor.reckoning.proportions import Proportions, Size, proportions
from advisor.situation import Situation


def _known(values: dict[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in values.items() if value is not None}


def _size(size: Size) -> dict[str, Any]:
    return _known(size._asdict())


def _circle(found: Proportions) -> dict[str, Any] | None:
    circle = found.circle
    if circle is None:
        return None
    return _known({"diameter_mm": circle.diameter, "margin_on": circle.on, "margin_off": circle.off})


def _drying(situation: Situation, hold: JudgedHold, found: Proportions, dry: Drying | None) -> dict[str, Any] | None:
    size = found.of("tenon.diameter")
    if size is None or dry is None:
        return None
    dried = grip_drying(situation, dry, hold.method, size.value, hold.rpm)
    return _known({"oval_mm": dried.oval, "leave_mm": dried.leave, "loosens_percent": dried.loosens})


def _proportions(situation: Situation, hold: JudgedHold, dry: Drying | None) -> dict[str, Any]:
    """Sizes of one hold: what to make, the least and the most, what gives first, what drying does to it."""
    found = proportions(situation, hold.method, hold.rpm)
    checks = [check._asdict() for check in found.checks if math.isfinite(check.have)]
    return _known(
        {
            "sizes": [_size(size) for size in found.sizes],
            "enough": found.enough,
            "margin": found.margin,
            "gives_first": found.gives_first or None,
            "checks": checks,
            "jaw_circle": _circle(found),
            "drying": _drying(situation, hold, found, dry),
            "notes": list(found.notes),
        }
    )


def _dried(found: Drying) -> dict[str, Any]:
    """What drying does to the piece."""
    return _known(
        {
            "from_percent": found.from_moisture,
            "to_percent": found.to_moisture,
            "shrinks_most_percent": found.most,
            "shrinks_least_percent": found.least,
            "diameter_mm": found.diameter,
            "oval_mm": found.oval,
            "wall_mm": found.wall,
            "wall_of_oval_mm": found.wall_of_oval,
            "finished_wall_mm": found.finished_wall if found.wall is not None else None,
            "woods": found.woods,
            "filled": found.filled,
        }
    )


def add_proportions(answer: dict[str, Any], advice: Advice) -> None:
    """Put sizes on every hold of the answer, and on wet wood what drying does to the piece."""
    situation = advice.situation
    dry = drying(situation)
    for entry in answer["holding"]:
        entry["proportions"] = _proportions(situation, advice.judgement.of(entry["method"]), dry)
    if dry is not None:
        answer["drying"] = _dried(dry)
