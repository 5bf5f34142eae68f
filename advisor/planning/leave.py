"""What a stage must leave for a later hold: the grip it cuts now, at the size at which that hold was judged."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from advisor.planning.jobs import ends, grips
from advisor.planning.stage import Stage
from advisor.reckoning.holds.sizes import OUTSIDE_GRIP_MM

WORDS = {
    "tenon": ("tenon", ("diameter", "length", "shoulder_diameter")),
    "recess": ("recess", ("diameter", "depth")),
    "stub": ("true cylinder for the jaws", ("diameter", "length")),
    "face": ("flat face for the block", ("diameter",)),
    "screws": ("waste for the screws", ("length", "circle")),
}


def _user(stages: Sequence[Stage], after: int, end: str) -> Stage | None:
    """The next stage that grips this end with something that must be cut for it."""
    for stage in stages[after + 1 :]:
        if stage.method and end in ends(stage.template.grips if stage.template.grips in ("foot", "top") else ""):
            return stage
        if end in stage.template.makes:
            return None
    return None


def leave(stages: Sequence[Stage], place: int) -> Iterator[dict[str, Any]]:
    """Grip, end, sizes in mm, and the stage it is for."""
    for end in stages[place].template.makes:
        user = _user(stages, place, end)
        kind = grips()[user.method].kind if user is not None else ""
        if user is None or user.used is None or kind not in WORDS:
            continue
        what, names = WORDS[kind]
        found = dict(user.used.figures.sizes)
        if kind == "stub" and user.used.figures.size is not None:
            found = {"diameter": user.used.figures.size, "length": OUTSIDE_GRIP_MM}
        entry: dict[str, Any] = {"what": what, "end": end, "for": user.template.name, "hold": user.method}
        entry |= {f"{name}_mm": found[name] for name in names if found.get(name) is not None}
        yield entry
