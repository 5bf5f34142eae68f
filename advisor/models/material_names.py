"""What the names in a case can mean: woods, woods known for their dust alone, records outside wood, or nothing."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal, NamedTuple

from advisor.models import hazards
from advisor.models import material as materials
from advisor.models import wood as woods
from advisor.models.substance import Material

Match = Literal["one", "several", "dust-only", "unknown", "material", "several-materials", "none"]
LONGEST_PHRASE = 3
# Words that sound like a preservative and are none.
UNTREATED = ("heat treated", "thermally treated", "untreated", "oil treated")
# Where the path of questions begins when the name says this much.
FIRST_QUESTION = {
    "unknown-plastic": "plastic",
    "unknown-stone": "stone",
    "unknown-laminate": "laminate",
    "unknown-alloy": "metal",
}


class Named(NamedTuple):
    """One name of the case.

    `woods` are the names under which its dust is looked up; `records` is the one outside wood that governs, the most
    troublesome where several fit; `spoken` are conditions of wood that the name itself states ("treated pine").
    """

    word: str
    match: Match
    choices: tuple[str, ...] = ()
    woods: tuple[str, ...] = ()
    records: tuple[Material, ...] = ()
    spoken: tuple[Material, ...] = ()
    suggestions: tuple[str, ...] = ()

    @property
    def first_question(self) -> str:
        """Where the path from "I do not know what this is" begins for this name."""
        wood = "wood" if self.match in ("unknown", "dust-only") else "start"
        return next((FIRST_QUESTION[one.id] for one in self.records if one.id in FIRST_QUESTION), wood)


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").replace("_", " ").split())


def _spoken(name: str) -> tuple[Material, ...]:
    """Conditions of wood that words of a name state."""
    text = _plain(name)
    for phrase in UNTREATED:
        text = text.replace(phrase, "")
    words = text.split()
    found = [materials.condition(word) for word in words]
    for word in words:
        found += materials.resolve(f"{word} wood").records
    for size in range(1, LONGEST_PHRASE + 1):
        for start in range(len(words) - size + 1):
            found += materials.resolve(" ".join(words[start : start + size])).records
    return tuple({record.id: record for record in found if record is not None and record.is_wood}.values())


def _trouble(record: Material) -> tuple[int, int, int]:
    """How troublesome a material is: its verdict, then its reasons to refuse, then its hazards."""
    return materials.VERDICT_ORDER.index(record.verdict), len(record.refuse_when), len(record.hazards)


def named(name: str) -> Named:
    """What one name can mean. A name that only resembles a known one means nothing, with the near names suggested."""
    found = woods.resolve(name)
    if found.kind in ("one", "several"):
        labels = tuple(wood.label for wood in found.woods)
        botanical = tuple(wood.botanical for wood in found.woods if wood.botanical)
        match: Match = "one" if found.kind == "one" else "several"
        own = set(_plain(" ".join((*labels, *botanical))).replace(",", " ").split())
        more = set(_plain(name).replace(",", " ").split()) - own  # the tables outside wood are large: only if need be
        return Named(name, match, labels, (name, *labels, *botanical), spoken=_spoken(name) if more else ())
    other = materials.resolve(name)
    outside = tuple(record for record in other.records if not record.is_wood)
    if outside:
        worst = max(outside, key=_trouble)
        match = "material" if len(other.records) == 1 else "several-materials"
        return Named(name, match, tuple(record.title for record in other.records), records=(worst,))
    spoken = _spoken(name)
    if hazards.for_species(name):
        return Named(name, "dust-only", woods=(name,), spoken=spoken)
    match = "unknown" if other.records or found.kind == "unknown" else "none"
    near = tuple(dict.fromkeys((*found.suggestions, *other.suggestions)))
    return Named(name, match, spoken=spoken, suggestions=near if match == "none" else ())


def names_of(whole: str, parts: Iterable[str]) -> list[Named]:
    """The name of the whole piece first, then those of its parts, each once."""
    return [named(name) for name in dict.fromkeys((whole, *parts))]
