"""What the names in a case can mean: woods, woods known for their dust alone, records outside wood, or nothing."""

from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import Literal, NamedTuple

from advisor.models import hazards
from advisor.models import material as materials
from advisor.models import wood as woods
from advisor.models.substance import Material

Match = Literal["one", "several", "dust-only", "unknown", "material", "several-materials", "none"]
LONGEST_PHRASE = 3
# Words that sound like a preservative and are none.
UNTREATED = ("heat treated", "thermally treated", "untreated", "oil treated")
LINKING = ("with", "and", "of", "a", "some", "piece")
SPOKEN_MOISTURE = {"green-wood": "green", "frozen-wood": "frozen"}
# Where the path of questions begins when the name says this much.
FIRST_QUESTION = {
    "unknown-plastic": "plastic",
    "unknown-stone": "stone",
    "unknown-laminate": "laminate",
    "unknown-alloy": "metal",
}


class Named(NamedTuple):
    """One name of the case.

    `found` is its wood among the tables of strength. `woods` are the names under which its dust is looked up; `records`
    is the one outside wood that governs, the most troublesome where several fit; `spoken` are conditions of wood that
    the name itself states ("treated pine").
    """

    word: str
    match: Match
    found: woods.Resolution
    choices: tuple[str, ...] = ()
    woods: tuple[str, ...] = ()
    records: tuple[Material, ...] = ()
    spoken: tuple[Material, ...] = ()
    suggestions: tuple[str, ...] = ()

    @property
    def said(self) -> frozenset[str]:
        """Conditions that the name itself states, in the words of a case."""
        return frozenset(word for record in self.spoken for word in record.case_words)

    @property
    def moisture(self) -> str | None:
        """How wet the name itself says it is."""
        return next((SPOKEN_MOISTURE[record.id] for record in self.spoken if record.id in SPOKEN_MOISTURE), None)

    @property
    def first_question(self) -> str:
        """Where the path from "I do not know what this is" begins for this name."""
        wood = "wood" if self.match in ("unknown", "dust-only") else "start"
        return next((FIRST_QUESTION[one.id] for one in self.records if one.id in FIRST_QUESTION), wood)


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").replace("_", " ").split())


def _phrases(words: list[str]) -> Iterator[tuple[slice, str]]:
    for size in range(1, LONGEST_PHRASE + 1):
        for start in range(len(words) - size + 1):
            yield slice(start, start + size), " ".join(words[start : start + size])


def _spoken(name: str) -> tuple[tuple[Material, ...], str]:
    """Conditions of wood that words of a name state, and the name without those words."""
    text = _plain(name)
    for phrase in UNTREATED:
        text = text.replace(phrase, "")
    words = text.split()
    found: dict[str, Material] = {}
    gone: set[int] = set()
    for place, phrase in _phrases(words):
        meant = [materials.condition(phrase), *materials.resolve(phrase).records]
        if place.stop - place.start == 1:
            meant += materials.resolve(f"{phrase} wood").records
        conditions = {record.id: record for record in meant if record is not None and record.is_wood}
        if conditions:
            gone.update(range(place.start, place.stop))
        found.update(conditions)
    left = [word for number, word in enumerate(words) if number not in gone and word not in LINKING]
    return tuple(found.values()), " ".join(left)


def _trouble(record: Material) -> tuple[int, int, int]:
    """How troublesome a material is: its verdict, then its reasons to refuse, then its hazards."""
    return materials.VERDICT_ORDER.index(record.verdict), len(record.refuse_when), len(record.hazards)


@lru_cache(maxsize=1024)
def named(name: str) -> Named:
    """What one name can mean. A name that only resembles a known one means nothing, with the near names suggested."""
    found = woods.resolve(name)
    if found.kind in ("one", "several"):
        own = set(_plain(" ".join(_labels(found))).replace(",", " ").split())
        more = set(_plain(name).replace(",", " ").split()) - own  # the tables outside wood are large: only if need be
        return _wood(name, found, _spoken(name)[0] if more else ())
    other = materials.resolve(name)
    outside = tuple(record for record in other.records if not record.is_wood)
    if outside:
        worst = max(outside, key=_trouble)
        match: Match = "material" if len(other.records) == 1 else "several-materials"
        return Named(name, match, found, tuple(record.title for record in other.records), records=(worst,))
    spoken, rest = _spoken(name)
    if spoken and (bare := woods.resolve(rest)).kind in ("one", "several"):
        return _wood(name, bare, spoken)
    if hazards.for_species(name):
        return Named(name, "dust-only", woods.resolve("unknown"), woods=(name,), spoken=spoken)
    if other.records or found.kind == "unknown":
        return Named(name, "unknown", woods.resolve("unknown"), spoken=spoken)
    near = tuple(dict.fromkeys((*found.suggestions, *other.suggestions)))
    return Named(name, "none", found, spoken=spoken, suggestions=near)


def _labels(found: woods.Resolution) -> tuple[str, ...]:
    return (*(wood.label for wood in found.woods), *(wood.botanical for wood in found.woods if wood.botanical))


def _wood(name: str, found: woods.Resolution, spoken: tuple[Material, ...]) -> Named:
    match: Match = "one" if found.kind == "one" else "several"
    labels = tuple(wood.label for wood in found.woods)
    return Named(name, match, found, labels, (name, *_labels(found)), spoken=spoken)


def names_of(whole: str, parts: Iterable[str]) -> list[Named]:
    """The name of the whole piece first, then those of its parts, each once."""
    return [named(name) for name in dict.fromkeys((whole, *parts))]
