"""The drying pause: how thick to leave it."""

from __future__ import annotations

from typing import Any

from advisor.planning.walk import Plan, Stage

WALL_SHARE = 0.1  # of the diameter; common practice, no source
OVERSIZE_SHARE = 0.1


def pause(plan: Plan, stage: Stage) -> dict[str, Any]:
    """Wall to leave on hollowed work, or the oversize of solid work, in mm."""
    diameter = plan.situation.body.diameter
    if stage.template.when == "wall":
        return {"texts": ["wall"], "wall_mm": WALL_SHARE * diameter}
    return {"texts": ["over"], "oversize_mm": OVERSIZE_SHARE * diameter}
