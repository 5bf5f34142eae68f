"""The drying pause: how thick to leave it, and how oval it comes back."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from advisor.physics.drying import diameter_to_leave
from advisor.planning.jobs import WALL
from advisor.planning.stage import Plan, Stage
from advisor.reckoning.drying import drying
from advisor.situation import settle


def pause(plan: Plan, when: str, before: Sequence[Stage]) -> dict[str, Any]:
    """Wall to leave on hollow work or diameter on solid work, and the oval, all mm; moistures in percent.

    The piece is the one of the stage before. Source: Wood Handbook, Table 4-3 and chapter 13; a tenth of the diameter
    for the wall is common practice, no source.
    """
    case = next(stage.case for stage in reversed(before) if stage.case is not None)
    found = drying(settle(case))
    if found is None:
        return {}
    told: dict[str, Any] = {
        "oval_mm": found.oval,
        "shrinks_percent": found.most,
        "from_percent": found.from_moisture,
        "to_percent": found.to_moisture,
        "wood": found.woods,
    }
    if when == WALL and found.wall is not None:
        return {**told, "wall_mm": found.wall}
    finished = plan.situation.case.work.finished_diameter
    if finished is None:
        return told
    return {**told, "finished_mm": finished, "diameter_mm": diameter_to_leave(finished=finished, shrinkage=found.most)}
