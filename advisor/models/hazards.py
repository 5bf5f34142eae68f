"""What is reported of a wood's dust and sap, and what a person who reacted to one wood must expect of another.

The list is a flag, never a dose, and a wood that is not on it has not been cleared.
"""

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Row, Table, Text, load

TIERS = {
    "T1": "dust extraction and a mask of class P2",
    "T2": "dust extraction, a half mask of class P3, and bare skin covered",
    "T3": "ask a doctor first, or choose another wood",
    "T4": "never",
}
EFFECTS = {
    "irritant": "irritates skin, eyes or breathing",
    "sensitizer": "can make you allergic for good",
    "asthma": "can bring on asthma",
    "alveolitis": "can inflame the lungs",
    "rhinitis": "makes the nose run",
    "sneezing": "makes you sneeze",
    "conjunctivitis": "makes the eyes sore",
    "dermatitis": "brings out a skin rash",
    "nausea": "causes nausea",
    "headache": "causes headaches",
    "nasal-cancer": "is linked with cancer of the nose",
    "heart-poison": "is a poison to the heart",
    "poison": "is poisonous",
    "splinters": "leaves splinters that fester",
}
HAZARDS = Table(
    "species_hazards.csv",
    (
        Text("id"),
        Text("title"),
        Text("names"),
        Text("genus", required=False),
        Text("family"),
        Text("group", required=False),
        Text("effects"),
        Text("potency", required=False, one_of=("+", "++", "+++", "++++")),
        Text("tier", one_of=tuple(TIERS)),
        Text("lung_sensitizer", one_of=("yes", "no")),
        Text("note", required=False),
        Text("source"),
    ),
    key=("id",),
    rows=90,
)
FACTS = Table("wood_dust_facts.csv", (Text("id"), Text("text"), Text("source")), key=("id",), rows=10)


WIDE_FAMILY = "Fabaceae"


class Hazard(NamedTuple):
    """What is reported of one wood; `potency` is the chart's plus signs, empty where it has none."""

    id: str
    title: str
    names: tuple[str, ...]
    genus: str
    family: str
    group: str
    effects: tuple[str, ...]
    potency: str
    tier: str
    lung_sensitizer: bool
    note: str
    source: str

    @property
    def effect_words(self) -> tuple[str, ...]:
        """The effects in plain words."""
        return tuple(EFFECTS[effect] for effect in self.effects)

    @property
    def control(self) -> str:
        """What the tier asks for, in plain words."""
        return TIERS[self.tier]

    @property
    def toxic_or_sensitizing(self) -> bool:
        """Enough to ask first when food or a toy is to be made of it."""
        return self.tier in ("T3", "T4") or bool({"sensitizer", "poison", "heart-poison"} & set(self.effects))


class CrossReaction(NamedTuple):
    """Why a reaction to one wood says something of another: the same wood, its genus, a family or a shared allergen."""

    reacted: str
    wood: str
    closeness: str
    text: str
    botanical: str = ""

    @property
    def distant(self) -> bool:
        """Only the pea family in common, which is too wide to say much."""
        return self.closeness == "family" and self.botanical == WIDE_FAMILY


# How close two woods stand, closest first, and the words for it.
_CLOSENESS = {
    "same": "is the wood that caused it",
    "genus": "belongs to the same genus as",
    "group": "holds allergens like those of",
    "family": "belongs to the same botanical family as",
}


def _hazard(row: Row) -> Hazard:
    return Hazard(
        id=row.text("id"),
        title=row.text("title"),
        names=tuple(row.text("names").split(";")),
        genus=row.text("genus"),
        family=row.text("family"),
        group=row.text("group"),
        effects=tuple(row.text("effects").split(";")),
        potency=row.text("potency"),
        tier=row.text("tier"),
        lung_sensitizer=row.text("lung_sensitizer") == "yes",
        note=row.text("note"),
        source=row.text("source"),
    )


@lru_cache(maxsize=1)
def all_hazards() -> tuple[Hazard, ...]:
    """Every row of the list."""
    return tuple(_hazard(row) for row in load(HAZARDS))


def wood_dust_facts() -> dict[str, tuple[str, str]]:
    """Facts that hold for every wood: text and source key by id."""
    return {row.text("id"): (row.text("text"), row.text("source")) for row in load(FACTS)}


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").replace(",", " ").split())


def _keys(hazard: Hazard) -> set[str]:
    return {_plain(word) for word in (hazard.id, hazard.title, *hazard.names)}


@lru_cache(maxsize=256)  # each answer asks for the same few names again
def _named(key: str) -> list[Hazard]:
    exact = [hazard for hazard in all_hazards() if key in _keys(hazard)]
    if exact:
        return exact
    botanical = [hazard for hazard in all_hazards() if hazard.genus.lower() == key.split()[0]]
    if botanical:
        return botanical
    family = [hazard for hazard in all_hazards() if hazard.family.lower() == key]
    if family:
        return family
    # "oregon oak" is an oak; a false relative is listed under its whole name and is found above
    return [hazard for hazard in all_hazards() if any(key.endswith(" " + name) for name in _keys(hazard))]


def for_species(*names: str) -> tuple[Hazard, ...]:
    """Every row for a trade name, a botanical name, a genus or a family; several names of one wood may be given.

    An empty answer means that nothing is reported here, not that the wood is harmless.
    """
    found = [hazard for name in names if _plain(name) for hazard in _named(_plain(name))]
    return tuple(dict.fromkeys(found))


def _closeness(one: Hazard, other: Hazard) -> str | None:
    if one.id == other.id:
        return "same"
    if one.genus and one.genus == other.genus:
        return "genus"
    if one.group and one.group == other.group:
        return "group"
    return "family" if one.family == other.family else None


def cross_reactions(reacted: str, *wood: str) -> tuple[CrossReaction, ...]:
    """Why somebody who reacted to `reacted` must expect a reaction to `wood` (its names), closest first.

    An empty answer means that no relation is known here; cross-reactions between unrelated woods happen too.
    """
    found = []
    for one in for_species(reacted):
        for other in for_species(*wood):
            closeness = _closeness(one, other)
            if closeness is not None:
                text = f"{other.title} {_CLOSENESS[closeness]}" + ("" if closeness == "same" else f" {one.title}")
                found.append(CrossReaction(one.title, other.title, closeness, text, other.family))
    order = list(_CLOSENESS)
    return tuple(sorted(dict.fromkeys(found), key=lambda entry: order.index(entry.closeness)))
