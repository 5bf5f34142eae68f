"""Which tool, how it is ground and presented, how fast its edge may travel, and what the cut asks of the machine."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from advisor.data.tables import Number, Row, Table, Text, load
from advisor.models.substance import Band, Material
from advisor.models.tooling import ToolpostRow, hand_tools, toolpost
from advisor.physics.cutting import cutting_power
from advisor.physics.metal import cutting_speed, spindle_speed
from advisor.situation import Situation
from advisor.situation.cut import TOOLPOST_DEPTH_MM, TOOLPOST_FEED_MM
from advisor.sources import source

if TYPE_CHECKING:
    from advisor.advice.advise import Advice

CHOICE = Table(
    "tool_choice.csv",
    (
        Text("family"),
        Text("grain"),
        Text("operation"),
        Number("least_diameter", 0.0, 3000.0, required=False),
        Number("most_ratio", 0.0, 100.0, required=False),
        Text("tool"),
        Number("bevel_low", 0.0, 90.0, required=False),
        Number("bevel_high", 0.0, 90.0, required=False),
        Text("why"),
        Text("source"),
    ),
    key=("family", "grain", "operation", "least_diameter", "most_ratio"),
    rows=31,
)
GENERAL = ToolpostRow(
    "general",
    "No table of its own: small rake, keen edge",
    (),
    rake=Band(0.0, 0.0),
    clearance=Band(8.0, 12.0),
    nose=Band(0.5, 1.0),
    edge="keen",
    steel=None,
    carbide=None,
    feed_rough=Band(0.05, 0.2),
    feed_finish=0.05,
    note="",
    source="memory",
)
END_GRAIN_CUTS = frozenset({"hollowing", "drilling"})
# Shapes the edge as it travels: none of these has a speed of the edge.
NO_EDGE = frozenset({"sanding", "balancing", "drilling"})
WHY_WOOD = "rake shears the fibers; a flat edge tears them"


def _fits(row: Row, situation: Situation) -> bool:
    body, least, most = situation.body, row.optional("least_diameter"), row.optional("most_ratio")
    return (least is None or body.diameter >= least) and (most is None or body.length <= most * body.diameter)


def _choice(situation: Situation) -> Row:
    """The hand tool for this family, grain and operation at this size; a row for the size comes before one for any.

    Where the grain is only assumed, a row for that comes first.
    """
    ordered = sorted(load(CHOICE), key=lambda row: row.optional("least_diameter") or 0.0)
    rows = {
        (row.text("family"), row.text("grain"), row.text("operation")): row for row in ordered if _fits(row, situation)
    }
    record = situation.material
    family = "wood" if situation.wood is not None else record.family if record is not None else "other"
    grain = "across" if situation.side_grain else "along"
    unsaid = [] if situation.case.work.grain is not None else [(family, "unsaid")]
    tried = [*unsaid, (family, grain), (family, "any"), ("other", "any")]
    return next(rows[(*key, situation.operation)] for key in tried if (*key, situation.operation) in rows)


def _hand_tool(situation: Situation) -> dict[str, Any]:
    row = _choice(situation)
    kind = row.text("tool")
    found: dict[str, Any] = {"kind": kind, "why": row.text("why"), "source": source(row.text("source")).title}
    low, high = row.optional("bevel_low"), row.optional("bevel_high")
    if low is not None and high is not None:
        found["bevel_deg"] = [low, high]
    named = [tool for tool in hand_tools() if tool.id.replace("-", " ") in kind]
    if named:
        found["never"] = max(named, key=lambda tool: len(tool.id)).never
    return found


def _groups(situation: Situation) -> list[str]:
    """The groups of the toolpost table that this wood meets, the one that decides first."""
    assert situation.wood is not None
    if "oily" in situation.traits.conditions:
        return ["dense-wood"]
    group = "softwood" if situation.wood.group == "softwood" else "hardwood"
    if situation.side_grain:
        return [group, "end-grain"]
    return ["end-grain", group] if situation.operation in END_GRAIN_CUTS else [group]


def _of_record(record: Material) -> ToolpostRow:
    """A row out of the material's own record, where no printed table has it."""
    return ToolpostRow(
        record.id,
        record.title,
        (record.id,),
        rake=record.rake or GENERAL.rake,
        clearance=record.clearance or GENERAL.clearance,
        nose=record.nose or GENERAL.nose,
        edge=GENERAL.edge,
        steel=record.surface_speed_steel,
        carbide=record.surface_speed_carbide,
        feed_rough=record.feed or GENERAL.feed_rough,
        feed_finish=GENERAL.feed_finish,
        note="",
        source=record.sources.get("speed-steel") or record.sources.get("rake") or record.source,
    )


def tables(situation: Situation) -> list[ToolpostRow]:
    """Every printed table that has this material, the fullest first; never empty."""
    record = situation.material
    if situation.wood is not None:
        return [row for group in _groups(situation) for row in toolpost(group)]
    if record is None:
        return [GENERAL]
    rows = sorted(toolpost(record.id), key=lambda row: row.rake is None)
    if rows and rows[0].rake is None:
        rows.insert(0, _of_record(record))
    return rows or [_of_record(record)]


def _speeds(situation: Situation, rows: Iterable[ToolpostRow], ceiling: float) -> list[dict[str, Any]]:
    """Each table's speed for steel and for carbide as spindle speeds at this diameter, clipped to the ceiling."""
    diameter = situation.case.cut.diameter or situation.body.diameter
    found = []
    for row in rows:
        for tool, band in (("steel", row.steel), ("carbide", row.carbide)):
            if band is None:
                continue
            wished = [spindle_speed(cutting_speed=speed, diameter=diameter) for speed in band]
            found.append(
                {
                    "tool": tool,
                    "table": row.title,
                    "source": source(row.source).title,
                    "m_per_min": list(band),
                    "rpm": [min(rpm, ceiling) for rpm in wished],
                    "clipped": any(rpm > ceiling for rpm in wished),
                }
            )
    return found


def _ground(row: ToolpostRow) -> dict[str, Any]:
    """Angles, nose and feeds of one table."""
    parts = {
        "rake_deg": row.rake,
        "clearance_deg": row.clearance,
        "nose_mm": row.nose,
        "feed_mm": row.feed_rough,
    }
    found: dict[str, Any] = {key: list(band) for key, band in parts.items() if band is not None}
    if row.feed_finish is not None:
        found["feed_finish_mm"] = row.feed_finish
    return found


def _toolpost(situation: Situation, rows: list[ToolpostRow]) -> dict[str, Any]:
    record, cut, first = situation.material, situation.case.cut, rows[0]
    found: dict[str, Any] = {
        "kind": "toolpost tool" + (f", {first.edge}" if first.edge else ""),
        "edge": first.edge,
        **_ground(first),
        "depth_mm": cut.depth if cut.depth is not None else TOOLPOST_DEPTH_MM,
        "chip_mm": cut.feed if cut.feed is not None else TOOLPOST_FEED_MM,
        "why": record.tool if record is not None else WHY_WOOD,
        "source": source(first.source).title,
    }
    if len(rows) > 1:
        found["tables"] = [
            {"table": row.title, "source": source(row.source).title, "note": row.note, **_ground(row)} for row in rows
        ]
    return found


def _load(advice: Advice) -> dict[str, Any]:
    """Force, torque and power of the cut, the power at the starting speed."""
    cut, machine = advice.situation.cut, advice.situation.case.machine
    torque = cut.force * cut.arm * 1e-3
    power = cutting_power(force=cut.force, diameter=2 * cut.arm, rpm=advice.speed.start)
    found: dict[str, Any] = {"force_n": cut.force, "torque_nm": torque, "power_w": power}
    if machine.power is not None:
        found["motor_w"] = machine.power
        found["motor_share"] = power / machine.power
    return found


def tool_of(advice: Advice) -> dict[str, Any]:
    """Tool and grind (degrees, mm), speeds of every table as rpm at this diameter below the ceiling, load of the cut.

    Nothing but the word "none" for a piece that is not to be mounted. Source: each table names its own; trade tables
    without one are common practice, no source.
    """
    situation, speed = advice.situation, advice.speed
    if advice.verdict == "do-not-mount":
        return {"kind": "none", "why": "it is not to be mounted"}
    rows = tables(situation)
    carriage = situation.cut.carriage
    found = _toolpost(situation, rows) if carriage else _hand_tool(situation)
    record = situation.material
    if record is not None:
        found["coolant"] = record.coolant or "dry"
        if record.heat_cap is not None:
            found["heat_cap_c"] = record.heat_cap
    if situation.operation in NO_EDGE:
        return found
    if carriage or situation.wood is None:
        found["speeds"] = _speeds(situation, rows, speed.ceiling.value)
    edges = (cutting_speed(diameter=situation.body.diameter, rpm=rpm) for rpm in (speed.start, speed.ceiling.value))
    return {**found, "edge_speed_m_per_min": list(edges), **_load(advice)}
