"""Which tool, how it is ground and presented, and how fast its edge travels."""

from __future__ import annotations

import math
from typing import Any

from advisor.data.tables import Number, Table, Text, load
from advisor.models.substance import Band
from advisor.reckoning.speed import Speed
from advisor.reckoning.speed_limits import surface_speeds
from advisor.situation import Situation

CHOICE = Table(
    "tool_choice.csv",
    (
        Text("family"),
        Text("grain"),
        Text("operation"),
        Text("tool"),
        Number("bevel_low", 0.0, 90.0, required=False),
        Number("bevel_high", 0.0, 90.0, required=False),
        Text("why"),
        Text("source"),
    ),
    key=("family", "grain", "operation"),
    rows=21,
)
RAKE_WOOD = Band(15.0, 30.0)
CLEARANCE_WOOD = Band(10.0, 15.0)
FEED_WOOD = Band(0.1, 0.4)


def _hand_tool(situation: Situation) -> dict[str, Any]:
    family = "wood" if situation.wood is not None else "other"
    rows = {(row.text("family"), row.text("grain"), row.text("operation")): row for row in load(CHOICE)}
    grain = "across" if situation.side_grain else "along"
    row = rows.get((family, grain, situation.operation)) or rows[(family, "any", situation.operation)]
    found: dict[str, Any] = {"kind": row.text("tool"), "why": row.text("why")}
    low, high = row.optional("bevel_low"), row.optional("bevel_high")
    if low is not None and high is not None:
        found["bevel_deg"] = [low, high]
    return found


def _toolpost(situation: Situation) -> dict[str, Any]:
    material = situation.material
    rake, clearance, feed = RAKE_WOOD, CLEARANCE_WOOD, FEED_WOOD
    if material is not None:
        rake = material.rake or Band(0.0, 0.0)
        clearance = material.clearance or Band(8.0, 12.0)
        feed = material.feed or Band(0.05, 0.2)
    return {
        "kind": "toolpost tool, honed sharp, a little nose radius",
        "rake_deg": list(rake),
        "clearance_deg": list(clearance),
        "feed_mm": list(feed),
        "why": material.tool if material is not None else "rake shears the fibers; a flat edge tears them",
    }


def tool_of(situation: Situation, speed: Speed) -> dict[str, Any]:
    """Tool, angles in degrees, feed in mm per turn, edge speed in m/min at start and ceiling, and why.

    Source: trade tables, common practice, no source; plastics as their own record cites.
    """
    found = _toolpost(situation) if situation.cut.carriage else _hand_tool(situation)
    around = math.pi * situation.body.diameter / 1000
    found["edge_speed_m_per_min"] = [around * speed.start, around * speed.ceiling.value]
    published = surface_speeds(situation)
    if published is not None:
        found["published_m_per_min"] = list(published)
    return found
