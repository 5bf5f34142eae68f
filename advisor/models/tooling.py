"""Tools for the toolpost and for the hand: angles, speeds, feeds, as the tables and practice give them.

No two published tables for plastics agree. Where they differ each stands in a row of its own: start at the lowest
speed, take the highest as the upper limit, and keep the edge sharp and polished.
"""

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Number, Row, Table, Text, load
from advisor.models.substance import Band

_BANDS = {
    "rake": (-20, 45),
    "clearance": (0, 45),
    "nose": (0, 20),
    "steel": (0, 1000),
    "carbide": (0, 1000),
    "feed_rough": (0, 2),
}
_NUMBERS = {
    f"{name}_{end}": Number(f"{name}_{end}", low, high, required=False)
    for name, (low, high) in _BANDS.items()
    for end in ("low", "high")
}
TOOLPOST = Table(
    "toolpost.csv",
    (
        Text("group"),
        Text("title"),
        Text("materials", required=False),
        _NUMBERS["rake_low"],
        _NUMBERS["rake_high"],
        _NUMBERS["clearance_low"],
        _NUMBERS["clearance_high"],
        _NUMBERS["nose_low"],
        _NUMBERS["nose_high"],
        Text("edge", required=False),
        _NUMBERS["steel_low"],
        _NUMBERS["steel_high"],
        _NUMBERS["carbide_low"],
        _NUMBERS["carbide_high"],
        _NUMBERS["feed_rough_low"],
        _NUMBERS["feed_rough_high"],
        Number("feed_finish", 0, 2, required=False),
        Text("note", required=False),
        Text("source"),
    ),
    key=("group", "title"),
    rows=32,
)
HAND_TOOLS = Table(
    "hand_tools.csv",
    (
        Text("id"),
        Text("title"),
        Number("bevel_low", 10, 100, required=False),
        Number("bevel_high", 10, 100, required=False),
        Text("use"),
        Text("never"),
        Text("note", required=False),
        Text("source"),
    ),
    key=("id",),
    rows=13,
)


class ToolpostRow(NamedTuple):
    """A fixed tool for a material by one table: angles in degrees, speeds in m/min, nose and feeds in mm."""

    group: str
    title: str
    materials: tuple[str, ...]
    rake: Band | None
    clearance: Band | None
    nose: Band | None
    edge: str
    steel: Band | None
    carbide: Band | None
    feed_rough: Band | None
    feed_finish: float | None
    note: str
    source: str


class HandTool(NamedTuple):
    """A tool held by hand; the bevel is the included angle in degrees, None where it comes as an insert."""

    id: str
    title: str
    bevel: Band | None
    use: str
    never: str
    note: str
    source: str


def _band(row: Row, name: str) -> Band | None:
    low, high = row.optional(f"{name}_low"), row.optional(f"{name}_high")
    return None if low is None or high is None else Band(low, high)


def _row(row: Row) -> ToolpostRow:
    return ToolpostRow(
        group=row.text("group"),
        title=row.text("title"),
        materials=tuple(part for part in row.text("materials").split(";") if part),
        rake=_band(row, "rake"),
        clearance=_band(row, "clearance"),
        nose=_band(row, "nose"),
        edge=row.text("edge"),
        steel=_band(row, "steel"),
        carbide=_band(row, "carbide"),
        feed_rough=_band(row, "feed_rough"),
        feed_finish=row.optional("feed_finish"),
        note=row.text("note"),
        source=row.text("source"),
    )


@lru_cache(maxsize=1)
def toolpost_rows() -> tuple[ToolpostRow, ...]:
    """Every row, woods first."""
    return tuple(_row(row) for row in load(TOOLPOST))


def toolpost(name: str) -> tuple[ToolpostRow, ...]:
    """The rows for a material's id or for a group ("softwood", "hardwood", "end-grain", "dense-wood").

    Several rows are several tables; none means that nobody's table has it.
    """
    return tuple(row for row in toolpost_rows() if name in row.materials or name == row.group)


@lru_cache(maxsize=1)
def hand_tools() -> tuple[HandTool, ...]:
    """Every hand tool."""
    return tuple(
        HandTool(
            id=row.text("id"),
            title=row.text("title"),
            bevel=_band(row, "bevel"),
            use=row.text("use"),
            never=row.text("never"),
            note=row.text("note"),
            source=row.text("source"),
        )
        for row in load(HAND_TOOLS)
    )
