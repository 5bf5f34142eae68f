"""Hazards of species: enough of them, found by any name, related by botany, and never read as a clean bill."""

import pytest

from advisor.models import hazards, wood
from advisor.sources import all_sources

ROWS = hazards.all_hazards()
FROM_MEMORY = 22


def test_there_are_at_least_forty_nine_rows() -> None:
    assert len(ROWS) >= 49


def test_every_row_has_a_source_effects_and_a_tier() -> None:
    assert {row.source for row in ROWS} <= set(all_sources())
    assert {effect for row in ROWS for effect in row.effects} <= set(hazards.EFFECTS)
    assert {row.tier for row in ROWS} == set(hazards.TIERS)


def test_rows_from_memory_do_not_grow() -> None:
    assert sum(row.source == "memory" for row in ROWS) <= FROM_MEMORY


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("cocobolo", {"cocobolo"}),
        ("Dalbergia retusa", {"cocobolo", "rosewoods", "african-blackwood"}),
        ("Dalbergia", {"cocobolo", "rosewoods", "african-blackwood"}),
        ("Western Red Cedar", {"western-red-cedar"}),
        ("Thuja plicata", {"western-red-cedar"}),
        ("oregon oak", {"oak"}),
        ("poison oak", {"poison-ivy-and-sumac"}),
        ("silky oak", {"silky-oak"}),
        ("Acer saccharum", {"maple"}),
        ("South African boxwood", {"south-african-boxwood"}),
        ("Buxus sempervirens", {"boxwood"}),
        (
            "Anacardiaceae",
            {"goncalo-alves", "quebracho", "cashew", "rengas", "poison-ivy-and-sumac", "poisonwood", "mango"},
        ),
    ],
)
def test_a_wood_is_found_by_trade_name_botany_or_family(name: str, expected: set[str]) -> None:
    assert {row.id for row in hazards.for_species(name)} == expected


def test_several_names_of_one_wood_give_each_row_once() -> None:
    found = hazards.for_species("western redcedar", "western red cedar", "Thuja plicata")
    assert [row.id for row in found] == ["western-red-cedar"]


@pytest.mark.parametrize("name", ["", "zzz", "basswood"])
def test_an_unlisted_wood_gives_nothing(name: str) -> None:
    assert hazards.for_species(name) == ()


@pytest.mark.parametrize(
    ("name", "tier"), [("manchineel", "T4"), ("oleander", "T4"), ("yew", "T3"), ("laburnum", "T3")]
)
def test_the_poisonous_ones_stand_in_the_top_tiers(name: str, tier: str) -> None:
    (row,) = hazards.for_species(name)
    assert row.tier == tier
    assert row.toxic_or_sensitizing


def test_woods_of_the_strength_table_with_a_bad_name_are_found() -> None:
    for name in ("teak", "redwood", "iroko", "greenheart", "white oak", "black walnut", "western redcedar"):
        found = wood.resolve(name)
        names = [word for species in found.woods for word in (species.label, species.botanical)]
        assert hazards.for_species(name, *names), name


@pytest.mark.parametrize(
    ("reacted", "now", "closeness"),
    [
        ("cocobolo", "cocobolo", "same"),
        ("cocobolo", "Brazilian rosewood", "genus"),
        ("cocobolo", "pau ferro", "group"),
        ("poison ivy", "goncalo alves", "group"),
        ("western red cedar", "redwood", "group"),
        ("mahogany", "sapele", "group"),
        ("cocobolo", "black locust", "family"),
    ],
)
def test_a_reaction_to_one_wood_warns_of_its_relatives(reacted: str, now: str, closeness: str) -> None:
    found = hazards.cross_reactions(reacted, now)
    assert found[0].closeness == closeness


def test_unrelated_woods_give_no_cross_reaction() -> None:
    assert hazards.cross_reactions("yew", "elm") == ()
    assert hazards.cross_reactions("zzz", "elm") == ()


def test_a_cross_reaction_reads_as_a_sentence() -> None:
    (found,) = hazards.cross_reactions("cocobolo", "pau ferro")
    assert found.text == "Pau ferro holds allergens like those of Cocobolo"


def test_effects_and_control_come_in_plain_words() -> None:
    (row,) = hazards.for_species("manchineel")
    assert row.control == "never"
    assert "is poisonous" in row.effect_words
