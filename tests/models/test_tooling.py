"""Tool tables: every row sourced, every end in order, both values where printed tables disagree."""

import pytest

from advisor.models import material, tooling
from advisor.sources import all_sources


def test_every_row_is_sourced_and_in_order() -> None:
    for row in tooling.toolpost_rows():
        assert row.source in all_sources()
        for band in (row.rake, row.clearance, row.nose, row.steel, row.carbide, row.feed_rough):
            assert band is None or band.low <= band.high, row.title


def test_every_material_named_exists() -> None:
    known = {record.id for record in material.all_materials()}
    assert {name for row in tooling.toolpost_rows() for name in row.materials} <= known


@pytest.mark.parametrize("material_id", ["nylon", "acetal", "ptfe", "polycarbonate", "acrylic", "hdpe"])
def test_where_tables_disagree_each_stands_in_its_row(material_id: str) -> None:
    rows = tooling.toolpost(material_id)
    assert len({row.source for row in rows}) >= 2
    assert len({row.steel for row in rows}) >= 2


def test_the_material_s_band_never_goes_outside_the_tables() -> None:
    for record in material.all_materials():
        rows = [row for row in tooling.toolpost(record.id) if row.steel is not None]
        band = record.surface_speed_steel
        if not rows or band is None or record.id == "cellulose-acetate":
            continue
        assert band.high <= max(row.steel.high for row in rows if row.steel), record.id


@pytest.mark.parametrize("group", ["softwood", "hardwood", "end-grain", "dense-wood"])
def test_woods_are_asked_for_by_group(group: str) -> None:
    (row,) = tooling.toolpost(group)
    assert row.rake is not None
    assert row.rake.low >= 10


def test_nobody_s_table_has_it() -> None:
    assert tooling.toolpost("lead") == ()


def test_brass_and_glass_laminate_get_no_positive_rake() -> None:
    for name in ("free-cutting-brass", "glass-epoxy"):
        (row,) = tooling.toolpost(name)
        assert row.rake is not None
        assert row.rake.high <= 0


def test_hand_tools_have_bevels_or_come_as_inserts() -> None:
    tools = {tool.id: tool for tool in tooling.hand_tools()}
    assert len(tools) == 13
    assert [key for key, tool in tools.items() if tool.bevel is None] == ["carbide-insert", "thread-chaser"]
    assert "bowls" in tools["spindle-roughing-gouge"].never
    assert tools["stone-scraper"].bevel == (90, 90)
