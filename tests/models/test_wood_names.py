"""Names as people write them find their wood; what is unclear is said; what is no wood is not one."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from advisor.data import tables, wood_tables
from advisor.models.wood import list_species, properties, resolve

# Names of the trade and botanical names, and the botanical name of the wood they mean (common practice, no source).
ONE = {
    "sugar maple": "Acer saccharum",
    "Maple, sugar": "Acer saccharum",
    "SUGAR MAPLE": "Acer saccharum",
    "  sugar   maple ": "Acer saccharum",
    "Acer saccharum": "Acer saccharum",
    "acer_saccharum": "Acer saccharum",
    "hard maple": "Acer saccharum",
    "maple (hard)": "Acer saccharum",
    "rock-maple": "Acer saccharum",
    "maple-sugar": "Acer saccharum",
    "curly hard maple": "Acer saccharum",
    "red maple": "Acer rubrum",
    "silver maple": "Acer saccharinum",
    "white ash": "Fraxinus americana",
    "ash, white": "Fraxinus americana",
    "beech": "Fagus grandifolia",
    "American beech": "Fagus grandifolia",
    "spalted beech": "Fagus grandifolia",
    "beechwood": "Fagus grandifolia",
    "cherry": "Prunus serotina",
    "black cherry": "Prunus serotina",
    "cherry wood": "Prunus serotina",
    "walnut": "Juglans nigra",
    "black walnut": "Juglans nigra",
    "white walnut": "Juglans cinerea",
    "butternut": "Juglans cinerea",
    "white oak": "Quercus alba",
    "northern red oak": "Quercus rubra",
    "Quercus rubra": "Quercus rubra",
    "burr oak": "Quercus macrocarpa",
    "live oak": "Quercus virginiana",
    "pecan": "Carya illinoinensis",
    "shagbark hickory": "Carya ovata",
    "yellow poplar": "Liriodendron tulipifera",
    "Yellow-Poplar": "Liriodendron tulipifera",
    "tulip poplar": "Liriodendron tulipifera",
    "basswood": "Tilia americana",
    "linden": "Tilia americana",
    "honey locust": "Gleditsia triacanthos",
    "black locust": "Robinia pseudoacacia",
    "robinia": "Robinia pseudoacacia",
    "sweet gum": "Liquidambar styraciflua",
    "black gum": "Nyssa sylvatica",
    "sassafras": "Sassafras albidum",
    "alder": "Alnus rubra",
    "white birch": "Betula papyrifera",
    "yellow birch": "Betula alleghaniensis",
    "bald cypress": "Taxodium distichum",
    "eastern red cedar": "Juniperus virginiana",
    "aromatic cedar": "Juniperus virginiana",
    "western red-cedar": "Thuja plicata",
    "tamarack": "Larix laricina",
    "sitka spruce": "Picea sitchensis",
    "monterey pine": "Pinus radiata",
    "ponderosa pine": "Pinus ponderosa",
    "purple heart": "Peltogyne spp.",
    "amaranth": "Peltogyne spp.",
    "lignum vitae": "Guaiacum spp.",
    "jatoba": "Hymenaea courbaril",
    "Brazilian cherry": "Hymenaea courbaril",
    "gonçalo alves": "Astronium graveolens",
    "Gonçalo  Alves": "Astronium graveolens",
    "khaya": "Khaya spp.",
    "Honduras mahogany": "Swietenia macrophylla",
    "sapele": "Entandrophragma cylindricum",
    "lapacho": "Tabebuia spp.",
    "teak": "Tectona grandis",
    "East Indian rosewood": "Dalbergia latifolia",
    "obeche": "Triplochiton scleroxylon",
    "spanish cedar": "Cedrela spp.",
    "iroko": "Chlorophora spp.",
    "balsa": "Ochroma pyramidale",
    "jarrah": "Eucalyptus marginata",
}

SEVERAL = {
    "maple": {"Acer"},
    "oak": {"Quercus"},
    "red oak": {"Quercus"},
    "oaks": {"Quercus"},
    "ash": {"Fraxinus"},
    "birch": {"Betula"},
    "elm": {"Ulmus"},
    "hickory": {"Carya"},
    "soft maple": {"Acer"},
    "rosewood": {"Dalbergia"},
    "cedar": {"Chamaecyparis", "Juniperus", "Calocedrus", "Thuja", "Callitropsis"},
    "pine": {"Pinus"},
    "yellow pine": {"Pinus"},
    "spruce": {"Picea"},
    "mahogany": {"Khaya", "Swietenia"},
    "gum": {"Liquidambar", "Nyssa"},
    "poplar": {"Liriodendron", "Populus"},
    "tulipwood": {"Liriodendron", "Dalbergia"},
    "douglas fir": {"Pseudotsuga"},
    "locust": {"Robinia", "Gleditsia"},
    "redwood": {"Sequoia"},
    "Quercus": {"Quercus"},
    "Shorea spp.": {"Shorea"},
    "Pseudotsuga menziesii": {"Pseudotsuga"},
    "sycamore": {"Platanus", "Acer"},
    "cypress": {"Taxodium", "Cupressus"},
    "Quercus robur": {"Quercus"},
    "european ash": {"Fraxinus"},
    "maple burl": {"Acer"},
}

UNKNOWN = [
    "unknown",
    "Unknown wood",
    "wood",
    "burl",
    "firewood",
    "hardwood",
    "cocobolo",
    "ebony",
    "Osage Orange",
    "boxwood",
    "wenge",
    "padauk",
    "yew",
    "olive",
    "apple",
    "applewood",
    "spalted pear",
    "bamboo",
]

NO_WOOD = [
    "acrylic",
    "brass",
    "aluminum",
    "steel",
    "nylon",
    "acetal",
    "HDPE",
    "PTFE",
    "polycarbonate",
    "epoxy",
    "resin",
    "phenolic",
    "linen phenolic",
    "ebonite",
    "horn",
    "bone",
    "antler",
    "ivory",
    "shell",
    "soapstone",
    "alabaster",
    "slate",
    "amber",
    "glass",
    "copper",
    "titanium",
    "cast iron",
    "cork",
    "MDF",
    "plywood",
    "foam",
    "rubber",
    "wax",
    "ceramic",
    "leather",
    "casein",
    "concrete",
    "stone",
    "carbon fiber",
    "",
    "  ",
    "?!",
    "7",
    "木",
]


@pytest.mark.parametrize(("name", "botanical"), ONE.items())
def test_a_clear_name_means_one_wood(name: str, botanical: str) -> None:
    found = resolve(name)
    assert found.kind == "one"
    assert [wood.botanical for wood in found.woods] == [botanical]
    assert found.suggestions == ()


@pytest.mark.parametrize(("name", "genera"), SEVERAL.items())
def test_an_unclear_name_lists_the_choices(name: str, genera: set[str]) -> None:
    found = resolve(name)
    assert found.kind == "several"
    assert len(found.woods) >= 2
    assert {wood.botanical.split()[0] for wood in found.woods} == genera


@pytest.mark.parametrize("name", UNKNOWN)
def test_a_wood_that_is_not_in_the_table_is_an_unknown_one(name: str) -> None:
    found = resolve(name)
    assert (found.kind, found.woods) == ("unknown", ())
    assert found.note


@pytest.mark.parametrize("name", NO_WOOD)
def test_what_is_no_wood_is_none_and_gets_no_wood_suggested(name: str) -> None:
    found = resolve(name)
    assert (found.kind, found.woods, found.suggestions) == ("none", (), ())
    with pytest.raises(ValueError, match="not the name of a wood"):
        properties(found, "dry")


@pytest.mark.parametrize(
    ("wrong", "right"),
    [
        ("mapel", "maple"),
        ("suger maple", "sugar maple"),
        ("walnutt", "walnut"),
        ("chery", "cherry"),
        ("padouk", "padauk"),
        ("mahogony", "mahogany"),
        ("rosewod", "rosewood"),
        ("lignum vitea", "lignum vitae"),
        ("purpelheart", "purpleheart"),
        ("hikory", "hickory"),
        ("Beach", "beech"),
        ("doglas fir", "douglas fir"),
    ],
)
def test_a_misspelling_is_told_what_was_meant(wrong: str, right: str) -> None:
    found = resolve(wrong)
    assert found.kind == "none"
    assert right in found.suggestions
    assert all(resolve(name).kind != "none" for name in found.suggestions)


def test_hard_maple_says_what_else_is_sold_under_the_name() -> None:
    assert "black maple" in resolve("hard maple").note


def test_every_species_answers_to_its_title_its_label_and_its_id() -> None:
    for species in list_species():
        for name in (str(species["title"]), str(species["name"])):
            assert [wood.species_id for wood in resolve(name).woods] == [species["name"]], name
        for name in (*species["also"], str(species["botanical"])):
            assert species["name"] in [wood.species_id for wood in resolve(name).woods], name


def test_every_name_of_the_names_table_means_what_the_table_says() -> None:
    meant: dict[str, list[str]] = {}
    for row in tables.load(wood_tables.NAMES):
        meant.setdefault(row.text("name"), []).extend([row.text("species_id")] if row.text("species_id") else [])
    assert len(meant) > 300
    for name, species in meant.items():
        found = resolve(name.upper())
        assert [wood.species_id for wood in found.woods] == species, name
        assert found.kind == ("unknown" if not species else "one" if len(species) == 1 else "several")


def test_no_trade_name_takes_a_species_own_name_away() -> None:
    own = {str(species["title"]).casefold(): species["name"] for species in list_species()}
    for row in tables.load(wood_tables.NAMES):
        if row.text("name") in own:
            assert own[row.text("name")] == row.text("species_id")


def test_names_of_the_trade_are_marked_as_such() -> None:
    assert {row.text("source") for row in tables.load(wood_tables.NAMES)} == {"common practice, no source", "memory"}
    assert len([row for row in tables.load(wood_tables.NAMES) if row.text("kind") == "trade"]) >= 80


def test_the_list_of_species_holds_all() -> None:
    listed = list_species()
    assert len(listed) == len({str(species["name"]) for species in listed}) == 193
    assert len({str(species["title"]) for species in listed}) == 193
    assert {str(species["group"]) for species in listed} == {"hardwood", "softwood"}
    conifers = {
        "Taxodium",
        "Chamaecyparis",
        "Juniperus",
        "Calocedrus",
        "Thuja",
        "Callitropsis",
        "Pseudotsuga",
        "Abies",
        "Tsuga",
        "Larix",
        "Pinus",
        "Sequoia",
        "Picea",
        "Cupressus",
        "Araucaria",
    }
    for species in listed:
        assert (str(species["botanical"]).split()[0] in conifers) == (species["group"] == "softwood"), species


@given(st.text(max_size=200))
def test_no_text_crashes(name: str) -> None:
    found = resolve(name)
    assert found.kind in ("one", "several", "unknown", "none")
    assert (len(found.woods) == 1) == (found.kind == "one")
    assert (len(found.woods) > 1) == (found.kind == "several")
    if found.kind != "none":
        assert properties(found, "green").crushing.low > 0


@given(st.sampled_from(sorted(ONE)), st.data())
def test_case_spaces_and_order_do_not_matter(name: str, data: st.DataObject) -> None:
    words = data.draw(st.permutations(name.replace(",", " ").split()))
    changed = data.draw(st.sampled_from([str.upper, str.lower, str.title]))("  ".join(words))
    assert [wood.species_id for wood in resolve(changed).woods] == [wood.species_id for wood in resolve(name).woods]
