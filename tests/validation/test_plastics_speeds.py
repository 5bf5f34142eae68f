"""Turning speeds and angles of plastics against the printed tables.

Carvill, Mechanical Engineer's Data Handbook, table 5.2.7 (depth 4 mm, feed 0.25 mm) and table 5.7.5.
"""

import pytest

from advisor.models import material, tooling
from advisor.physics.contact import friction
from advisor.physics.cutting import specific_forces

SOURCES = ("carvill-5-2-7", "carvill-5-7-5", "laminate-machining-note")
CARVILL_5_2_7 = {
    "nylon": (50, (160, 175)),
    "acetal": (50, (160, 175)),
    "polycarbonate": (50, (160, 175)),
    "ptfe": (50, (145, 160)),
    "hdpe": (50, (145, 160)),
    "polypropylene": (50, (145, 160)),
    "acrylic": (50, (160, 175)),
    "polystyrene": (18, (50, 65)),
}
HARD_THERMOSETS = (48, (145, 160))


@pytest.mark.parametrize("material_id", CARVILL_5_2_7)
def test_start_with_steel_is_the_printed_speed(material_id: str) -> None:
    steel, _ = CARVILL_5_2_7[material_id]
    value = material.get(material_id).values["speed-steel"]
    assert (value.spread.low, value.spread.typical, value.source) == (steel, steel, "carvill-5-2-7")


@pytest.mark.parametrize("material_id", CARVILL_5_2_7)
def test_speed_with_carbide_is_the_printed_band(material_id: str) -> None:
    record = material.get(material_id)
    assert record.surface_speed_carbide == CARVILL_5_2_7[material_id][1]
    assert record.values["speed-carbide"].source == "carvill-5-2-7"


@pytest.mark.parametrize("material_id", ["paper-phenolic", "linen-phenolic", "canvas-phenolic"])
def test_phenolic_is_the_printed_hard_thermoset(material_id: str) -> None:
    record = material.get(material_id)
    assert record.values["speed-steel"].spread.typical == HARD_THERMOSETS[0]
    assert record.surface_speed_carbide == HARD_THERMOSETS[1]


def test_nylon_in_the_other_table() -> None:
    rows = [row for row in tooling.toolpost("nylon") if row.source == "carvill-5-7-5"]
    assert [(row.steel, row.clearance, row.feed_rough) for row in rows] == [((126, 300), (20, 30), (0.1, 0.25))]


def test_ptfe_and_rigid_pvc_in_the_other_table() -> None:
    ptfe = [row for row in tooling.toolpost("ptfe") if row.source == "carvill-5-7-5"]
    assert [(row.clearance, row.feed_rough) for row in ptfe] == [((20, 30), (0.05, 0.25))]
    (pvc,) = tooling.toolpost("pvc")
    # printed as 1.5 to 5 m/s
    assert pvc.steel == (1.5 * 60, 5 * 60)
    assert (pvc.rake, pvc.clearance, pvc.feed_rough) == ((-10, 0), (20, 30), (0.25, 0.75))


def test_phenolic_stays_below_the_temperature_of_its_machining_note() -> None:
    for material_id in ("paper-phenolic", "linen-phenolic", "canvas-phenolic"):
        record = material.get(material_id)
        assert record.heat_cap == 150
        assert record.values["heat-cap"].source == "laminate-machining-note"
        assert record.coolant == "dry"
        assert "extraction" in record.dust_control


def test_glass_laminate_is_cut_with_zero_rake_and_slower_than_paper() -> None:
    """The machining note on glass-base grades: carbide or diamond, zero rake, speeds below those of paper base."""
    glass, paper = material.get("glass-epoxy"), material.get("paper-phenolic")
    assert glass.rake == (0, 0)
    assert glass.surface_speed_steel is None
    assert glass.surface_speed_carbide is not None
    assert paper.surface_speed_carbide is not None
    assert glass.surface_speed_carbide.high < paper.surface_speed_carbide.high


def test_neighboring_tables_of_the_program_say_the_same() -> None:
    """Cutting force and friction stand in a table of figures and in the record of the material."""
    records = {record.id: record.cutting_k for record in material.all_materials() if record.cutting_k is not None}
    both = set(records) & set(specific_forces())
    assert len(both) >= 12
    assert {name: records[name] for name in both} == {name: specific_forces()[name] for name in both}
    pairs = {"ptfe": "ptfe", "hdpe": "hdpe", "acetal": "acetal", "nylon": "nylon", "pc": "polycarbonate",
             "acrylic": "acrylic", "phenolic": "canvas-phenolic"}  # fmt: skip
    for pair, name in pairs.items():
        assert material.get(name).friction == friction(f"{pair}-steel")
