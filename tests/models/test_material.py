"""Materials and conditions: complete, sourced, found by every name, and never softer than the trade is."""

import csv
import re
from pathlib import Path

import pytest

from advisor.models import material
from advisor.models.substance import HAZARDS, PROPERTIES
from advisor.sources import all_sources

DATA = Path(material.__file__).parents[1] / "data"
RECORDS = material.all_materials()
# How many values stand on nobody's printed page. Lower it when a value gets a source; nothing may raise it.
VALUES_FROM_MEMORY = 869
WORDS_FROM_MEMORY = 41
CONDITION_WORDS = (
    "check crack through-crack ring-shake spalted punky rot bark-inclusion live-edge knot pith void burl crotch "
    "worm-holes painted treated nails grit glued-joint uncured bowed oily stress-crazed untested-glue reaction-wood"
)
# What nothing switches off: common practice, one line each of the trade's list of refusals.
HARD = {
    "treated-wood": {"always"},
    "cca-treated-wood": {"always"},
    "creosoted-wood": {"always"},
    "unknown-alloy": {"always"},
    "beryllium-copper": {"always"},
    "ivory": {"always"},
    "celluloid": {"sparks", "no-water"},
    "soapstone": {"dry"},
    "unknown-stone": {"dry", "untested"},
    "magnesium": {"no-class-D"},
    "through-cracked-wood": {"through-crack"},
}
SHARED = {
    *("acrylic resin", "asbestos", "casting resin", "celluloid", "cellulose", "cloth phenolic", "copper alloy"),
    *("cotton phenolic", "countertop material", "countertop offcut", "cutting board plastic", "fabric phenolic"),
    *("fiberglass", "fibreglass", "glass laminate", "imitation ivory", "imitation tortoiseshell", "iron", "ivory"),
    *("laminate", "light alloy", "light metal", "metal", "nut", "pe", "phenolic", "phenolic laminate", "plastic"),
    *("poly", "polyethylene", "pressure treated wood", "quartz", "resin", "rubber", "shell", "srbf", "steel"),
    *("stone", "thermoset", "tortoiseshell", "treated lumber", "treated wood", "worktop offcut"),
}


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").split())


def test_there_are_at_least_eighty_records_and_every_family_has_some() -> None:
    assert len(RECORDS) >= 80
    assert {record.family for record in RECORDS} == set(material.FAMILIES)


def test_every_number_has_a_source_that_exists() -> None:
    used = {key for record in RECORDS for key in record.sources.values()}
    used |= {other.source for record in RECORDS for other in record.look_alikes}
    assert used <= set(all_sources())


def test_values_from_memory_do_not_grow() -> None:
    values = [value for record in RECORDS for value in record.values.values() if value.source == "memory"]
    assert len(values) <= VALUES_FROM_MEMORY
    assert sum(record.source == "memory" for record in RECORDS) <= WORDS_FROM_MEMORY


def test_every_value_is_in_order_and_in_its_unit() -> None:
    for record in RECORDS:
        for name, value in record.values.items():
            assert value.spread.low <= value.spread.typical <= value.spread.high, (record.id, name)
            assert value.unit == PROPERTIES[name], (record.id, name)


def test_every_record_has_what_the_mechanics_cannot_do_without() -> None:
    for record in RECORDS:
        assert 10 < record.density.low <= record.density.high < 12_000, record.id
        assert 0 < record.friction.low <= record.friction.high <= 1, record.id


def test_what_may_be_mounted_and_is_not_wood_has_strength_and_a_speed() -> None:
    for record in RECORDS:
        if record.is_wood or record.verdict == "do-not-mount":
            continue
        assert record.tensile is not None, record.id
        assert record.compressive is not None, record.id
        assert record.modulus is not None, record.id
        speeds = (record.speed_multiplier, record.surface_speed_steel, record.surface_speed_carbide, record.rpm_cap)
        assert any(speed is not None for speed in speeds), record.id


def test_nothing_refused_whatever_the_setup_carries_a_speed() -> None:
    for record in RECORDS:
        if record.verdict == "do-not-mount":
            assert record.speed_multiplier is None, record.id
            assert record.surface_speed_steel is None, record.id


def test_no_multiplier_is_above_the_trade_s_own_band() -> None:
    assert all(0 < (record.speed_multiplier or 1) <= 1 for record in RECORDS)


def test_every_word_is_of_its_closed_list() -> None:
    for record in RECORDS:
        assert set(record.hazards) <= set(HAZARDS), record.id
        assert set(record.needs) | set(record.dust_control) <= set(material.NEEDS), record.id
        assert set(record.refuse_when) <= set(material.REFUSALS), record.id
        assert set(record.hard) <= set(record.refuse_when), record.id


def test_every_closed_word_is_used() -> None:
    assert {word for record in RECORDS for word in record.refuse_when} == set(material.REFUSALS)
    assert {word for record in RECORDS for word in record.needs} | {
        word for record in RECORDS for word in record.dust_control
    } == set(material.NEEDS)
    assert {word for record in RECORDS for word in record.hazards} == set(HAZARDS)


@pytest.mark.parametrize("material_id", HARD)
def test_hard_refusals_of_the_trade_are_marked(material_id: str) -> None:
    assert set(material.get(material_id).hard) == HARD[material_id]


def test_always_refused_and_do_not_mount_go_together() -> None:
    for record in RECORDS:
        if "always" in record.refuse_when:
            assert record.verdict == "do-not-mount", record.id


def test_names_are_unique_or_shared_on_purpose() -> None:
    owners: dict[str, set[str]] = {}
    for record in RECORDS:
        for name in (record.id, record.title, *record.names, *record.wide_names):
            owners.setdefault(_plain(name), set()).add(record.id)
    assert {name for name, ids in owners.items() if len(ids) > 1} == SHARED


@pytest.mark.parametrize("word", CONDITION_WORDS.split())
def test_every_condition_of_a_case_has_its_record(word: str) -> None:
    found = material.condition(word)
    assert found is not None
    assert [record.id for record in RECORDS if word in record.case_words] == [found.id]


def test_sound_wood_has_no_condition() -> None:
    assert material.condition("sound") is None


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("acetal", "acetal"),
        ("Black acetal rod", "acetal"),
        ("POM", "acetal"),
        ("UHMW-PE", "uhmw"),
        ("G-10", "glass-epoxy"),
        ("canvas phenolic rod", "canvas-phenolic"),
        ("brass", "free-cutting-brass"),
        ("aluminium bar", "aluminum"),
        ("vegetable ivory", "tagua-nut"),
        ("cellulose nitrate", "celluloid"),
        ("railroad tie", "creosoted-wood"),
        ("pine cones", "pine-cone-resin"),
        ("copper", "copper"),
        ("unknown metal", "unknown-alloy"),
    ],
)
def test_a_trade_name_means_one_material(name: str, expected: str) -> None:
    found = material.resolve(name)
    assert (found.kind, [record.id for record in found.records]) == ("one", [expected])


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("celluloid", {"celluloid", "cellulose-acetate"}),
        ("shell", {"shell", "mother-of-pearl", "coconut-shell"}),
        ("phenolic", {"paper-phenolic", "linen-phenolic", "canvas-phenolic", "glass-phenolic"}),
        ("resin", {"polyester-casting", "epoxy-casting", "urethane-casting", "wood-resin", "amber"}),
        ("light metal", {"aluminum", "magnesium"}),
    ],
)
def test_a_word_that_means_several_shows_them_all(name: str, expected: set[str]) -> None:
    found = material.resolve(name)
    assert found.kind == "several"
    assert {record.id for record in found.records} == expected


@pytest.mark.parametrize("name", ["plastic", "stone", "metal"])
def test_a_family_word_includes_the_one_nobody_can_name(name: str) -> None:
    ids = {record.id for record in material.resolve(name).records}
    assert ids & {"unknown-plastic", "unknown-stone", "unknown-alloy"}
    assert len(ids) > 3


def test_a_misspelling_is_never_taken_for_the_material_it_resembles() -> None:
    found = material.resolve("acetel")
    assert (found.kind, found.records) == ("none", ())
    assert "acetal" in found.suggestions


@pytest.mark.parametrize("name", ["", "black", "rod", "zzz"])
def test_a_word_that_says_nothing_finds_nothing(name: str) -> None:
    assert material.resolve(name).kind == "none"


# Water float test: physics that any reader can repeat at a sink.
@pytest.mark.parametrize("material_id", ["uhmw", "hdpe", "ldpe", "polypropylene", "cork", "wax"])
def test_what_floats_is_lighter_than_water(material_id: str) -> None:
    assert material.get(material_id).density.high <= 1000


@pytest.mark.parametrize("material_id", ["acetal", "nylon", "ptfe", "acrylic", "canvas-phenolic", "amber", "bone"])
def test_what_sinks_is_heavier_than_water(material_id: str) -> None:
    assert material.get(material_id).density.low > 1000


def test_density_tells_apart_what_the_tables_say_it_tells_apart() -> None:
    for heavy, light in (("aluminum", "magnesium"), ("acetal", "nylon"), ("pvc", "abs"), ("ptfe", "acetal")):
        assert material.get(heavy).density.low > material.get(light).density.high


@pytest.mark.parametrize("material_id", ["uhmw", "hdpe", "ldpe", "polypropylene", "ptfe", "acetal", "nylon"])
def test_no_glue_holds_on_what_nothing_sticks_to(material_id: str) -> None:
    assert material.get(material_id).takes_glue == "no"


@pytest.mark.parametrize("material_id", ["magnesium", "titanium", "aluminum", "celluloid"])
def test_chips_that_burn_are_not_sent_into_a_dust_bag(material_id: str) -> None:
    assert "extraction" not in material.get(material_id).dust_control


def test_asthma_words_reach_board_resin_spalt_and_shell() -> None:
    for material_id in ("mdf", "coffee-in-resin", "urethane-casting", "spalted-wood", "shell", "bone"):
        assert material.get(material_id).lung_sensitizer, material_id
    assert not material.get("acetal").lung_sensitizer
    assert material.get("epoxy-casting").toxic_or_sensitizing
    assert not material.get("hdpe").toxic_or_sensitizing


def test_look_alikes_are_records_and_told_apart_without_fire_or_nose() -> None:
    for record in RECORDS:
        for other in record.look_alikes:
            assert material.get(other.other).id != record.id
            assert not re.search(r"\b(burn|sniff|smell|taste|lick|hot needle|flame)", other.tell), (record.id, other)


def test_what_differs_most_in_danger_warns_of_its_twin() -> None:
    for one, other in (
        ("aluminum", "magnesium"),
        ("bronze", "beryllium-copper"),
        ("cellulose-acetate", "celluloid"),
        ("solid-surface", "engineered-quartz"),
        ("canvas-phenolic", "asbestos-laminate"),
    ):
        assert other in {entry.other for entry in material.get(one).look_alikes}


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.id)
def test_explain_is_half_a_page_that_ends_in_a_step_and_a_person(record: material.Material) -> None:
    text = material.explain(record)
    assert 8 <= len(text.splitlines()) <= 24
    for part in ("How it fails", "Leave it alone when", "Next step", "Ask:", "Sources:"):
        assert part in text
    assert not re.search(r"\bNone\b|\.\.(?!\.)|  ", text)


def test_explain_names_speed_heat_and_refusal() -> None:
    text = material.explain(material.get("magnesium"))
    assert "150 to 210 m/min" in text
    assert "no class D extinguisher" in text
    assert "Have at hand: class D powder" in text
    assert "Keep it below 150 °C" in material.explain(material.get("paper-phenolic"))


def test_no_file_promises_what_nobody_can_promise() -> None:
    promises = re.compile(r"\bsafe(ly)?\b|non-?toxic|harmless|\bno risk\b", re.IGNORECASE)
    files = (
        "materials conditions material_values material_names material_look_alikes material_questions methods toolpost"
    )
    files += " species_hazards exposure_limits hand_tools wood_dust_facts"
    for name in files.split():
        with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as lines:
            for row in csv.reader(lines):
                assert not any(promises.search(cell) for cell in row), (name, row)


def test_the_list_has_name_title_family_and_verdict() -> None:
    listed = material.list_materials()
    assert len(listed) == len(RECORDS)
    assert listed[0].keys() == {"name", "title", "family", "verdict"}
    assert {entry["verdict"] for entry in listed} == set(material.VERDICT_ORDER)
