"""Facts on toxic woods against HSE Woodworking Information Sheet No 30 and the OSHA page on wood dust."""

import pytest

from advisor.models import hazards
from advisor.sources import all_sources

SOURCES = ("hse-wis30", "osha-wood-dust")
FACTS = hazards.wood_dust_facts()


@pytest.mark.parametrize(
    ("key", "printed"),
    [
        ("onset", "15 days"),
        ("rosewood-names", "30 different species"),
        ("rosewood-names", "ten trade names"),
        ("traces", "very small amounts"),
        ("cross", "not wood"),
        ("list-is-not-complete", "may have the same effects"),
        ("boards", "softwood"),
        ("forms", "lichens"),
    ],
)
def test_a_fact_of_the_sheet_is_told(key: str, printed: str) -> None:
    text, source = FACTS[key]
    assert printed in text
    assert source == "hse-wis30"


def test_every_fact_has_a_source() -> None:
    assert {source for _, source in FACTS.values()} <= set(all_sources())


# ACGIH carcinogen notes as printed by OSHA: A1 oak, beech; A2 birch, mahogany, teak, walnut.
@pytest.mark.parametrize("name", ["oak", "beech", "teak", "mahogany", "black walnut"])
def test_a_suspected_carcinogen_carries_the_nasal_cancer_flag(name: str) -> None:
    assert any("nasal-cancer" in row.effects for row in hazards.for_species(name))


@pytest.mark.parametrize(("name", "group"), [("oak", "A1"), ("beech", "A1"), ("birch", "A2"), ("teak", "A2")])
def test_its_group_is_told(name: str, group: str) -> None:
    assert any(group in row.note for row in hazards.for_species(name))


# Chart of June 1990 in reprints: potency as plus signs.
@pytest.mark.parametrize(
    ("name", "potency"),
    [
        ("western red cedar", "+++"),
        ("iroko", "+++"),
        ("rosewood", "++++"),
        ("yew", "++++"),
        ("oleander", "++++"),
        ("greenheart", "+++"),
        ("cocobolo", "+++"),
        ("teak", "++"),
        ("black walnut", "++"),
        ("elm", "+"),
        ("satinwood", "+++"),
        ("dahoma", "++"),
        ("pau ferro", "+"),
        ("wenge", "+"),
        ("sassafras", "+"),
        ("redwood", "++"),
    ],
)
def test_potency_is_the_chart_s(name: str, potency: str) -> None:
    assert hazards.for_species(name)[0].potency == potency
