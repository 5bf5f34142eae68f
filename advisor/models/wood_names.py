"""From the name a person writes to the woods of the strength table it can mean."""

import re
from collections.abc import Iterable, Iterator
from functools import cache, lru_cache
from typing import Literal, NamedTuple

from advisor.data import wood_tables
from advisor.data.tables import FOLDER, load
from advisor.kept import kept

Kind = Literal["one", "several", "unknown", "none"]

# Said of a piece, not of a species: dropped when the name as written is not known.
QUALIFIERS = frozenset(
    (
        "wood",
        "timber",
        "lumber",
        "log",
        "board",
        "blank",
        "block",
        "bowl",
        "spindle",
        "billet",
        "burl",
        "burr",
        "crotch",
        "curly",
        "figured",
        "quilted",
        "flame",
        "fiddleback",
        "tiger",
        "birdseye",
        "bird",
        "birds",
        "s",
        "eye",
        "spalted",
        "ambrosia",
        "highly",
        "wormy",
        "knotty",
        "old",
        "young",
        "growth",
        "air",
        "kiln",
        "dry",
        "dried",
        "wet",
        "green",
        "seasoned",
        "fresh",
        "rough",
        "sawn",
        "clear",
        "heart",
        "heartwood",
        "sap",
        "sapwood",
        "quartersawn",
        "reclaimed",
        "solid",
        "spp",
        "sp",
        "species",
        "the",
        "a",
        "of",
        "from",
    )
)
WORD = re.compile(r"[a-z0-9]+")
LONGEST_NAME = 80
CLOSENESS = 0.8


class Wood(NamedTuple):
    """One species of the strength table. `aliases` are its label in the table and its trade names."""

    species_id: str
    label: str
    botanical: str
    group: str
    origin: str
    aliases: tuple[str, ...]


class Resolution(NamedTuple):
    """What a name can mean.

    kind: `one` wood; `several` (the worst of them stands in for every property); `unknown`: a wood, but not which, or
    one that is not in the table; `none`: no wood's name, with names close to it as suggestions. `name` is the name as
    asked, `note` what the reader should know about it.
    """

    kind: Kind
    woods: tuple[Wood, ...]
    suggestions: tuple[str, ...] = ()
    name: str = ""
    note: str = ""


class _Entry(NamedTuple):
    species: tuple[str, ...]
    kind: str
    note: str


class _Index(NamedTuple):
    woods: dict[str, Wood]
    by_words: dict[tuple[str, ...], _Entry]
    by_letters: dict[str, _Entry]
    by_genus: dict[str, tuple[str, ...]]
    spellings: tuple[str, ...]


def woods() -> dict[str, Wood]:
    """Every species of the strength table by its id."""
    return _index().woods


def _read_woods() -> dict[str, Wood]:
    aliases: dict[str, list[str]] = {}
    for row in load(wood_tables.NAMES):
        if row.text("kind") == "trade":
            aliases.setdefault(row.text("species_id"), []).append(row.text("name"))
    return {
        (key := row.text("species_id")): Wood(
            key,
            row.text("title"),
            row.text("botanical"),
            row.text("group"),
            row.text("origin"),
            (row.text("label"), *aliases.get(key, ())),
        )
        for row in load(wood_tables.SPECIES)
    }


def list_species() -> list[dict[str, str | list[str]]]:
    """Every species as a plain record: name, title, botanical, group, origin, also."""
    return [
        {
            "name": wood.species_id,
            "title": wood.label,
            "botanical": wood.botanical,
            "group": wood.group,
            "origin": wood.origin,
            "also": list(wood.aliases),
        }
        for wood in woods().values()
    ]


@lru_cache(maxsize=1024)
def resolve(name: str) -> Resolution:
    """The woods a name can mean: common name, reversed name, botanical name, trade name; case does not matter.

    A name of several woods gives all of them. Words said of the piece ("curly", "burl", "wood") are dropped when the
    name as written is not known. Names of the trade are common practice, no source.
    """
    asked = name.strip()
    words = _words(asked[:LONGEST_NAME])
    entry = next((found for guess in _guesses(words) if (found := _look_up(guess))), None)
    if entry is None:
        return Resolution("none", (), _close(" ".join(words)), asked)
    meant = tuple(woods()[species] for species in entry.species)
    kind: Kind = "one" if len(meant) == 1 else "several" if meant else "unknown"
    return Resolution(kind, meant, (), asked, entry.note)


def _words(name: str) -> tuple[str, ...]:
    plain = name.casefold()
    if not plain.isascii():
        import unicodedata

        plain = "".join(letter for letter in unicodedata.normalize("NFKD", plain) if not unicodedata.combining(letter))
    return tuple(WORD.findall(plain.replace("grey", "gray").replace("redcedar", "red cedar")))


def _guesses(words: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    yield words
    shorter = words
    while shorter and shorter[-1] in QUALIFIERS:
        shorter = shorter[:-1]
        yield shorter
    bare = tuple(word for word in words if word not in QUALIFIERS)
    yield bare
    yield tuple(word.removesuffix("s") for word in bare)
    yield tuple(word.removesuffix("wood") for word in bare)


def _look_up(words: tuple[str, ...]) -> _Entry | None:
    index = _index()
    if len(words) == 2 and words[1] in ("spp", "sp"):
        words = words[:1]
    entry = index.by_words.get(tuple(sorted(words))) or index.by_letters.get("".join(words))
    if entry is None and 1 <= len(words) <= 2 and (genus := index.by_genus.get(words[0])):
        return _Entry(genus, "family", "not in the table; its genus stands in" if len(words) == 2 else "")
    return entry


def _names(woods: Iterable[Wood]) -> Iterator[tuple[str, _Entry]]:
    entries: dict[str, list[str]] = {}
    said: dict[str, tuple[str, str]] = {}
    for row in load(wood_tables.NAMES):
        entries.setdefault(row.text("name"), []).extend(filter(None, [row.text("species_id")]))
        said[row.text("name")] = row.text("kind"), row.text("note")
    for name, species in entries.items():
        yield name, _Entry(tuple(species), *said[name])
    botanical: dict[str, list[str]] = {}
    for wood in woods:
        own = _Entry((wood.species_id,), "own", "")
        for name in (wood.label, wood.aliases[0], wood.species_id):
            yield name, own
        for name in dict.fromkeys((wood.botanical, " ".join(wood.botanical.split()[:2]))):
            botanical.setdefault(name, []).append(wood.species_id)
    for name, species in botanical.items():
        yield name, _Entry(tuple(species), "own", "")


@cache
def _index() -> _Index:
    tables = [str(FOLDER / table.file) for table in (wood_tables.NAMES, wood_tables.SPECIES)]
    return kept(__file__, (*tables, __file__), _new_index)


def _new_index() -> _Index:
    by_words: dict[tuple[str, ...], _Entry] = {}
    by_letters: dict[str, _Entry] = {}
    by_genus: dict[str, list[str]] = {}
    spellings: dict[str, None] = {}
    found = _read_woods()
    for name, entry in _names(found.values()):
        words = _words(name)
        key = tuple(sorted(words))
        known = by_words.get(key)
        # a botanical name may stand for several rows of the table: the longer list is the safer answer
        if known is None or (known.kind == "own" and len(entry.species) > len(known.species)):
            by_words[key] = by_letters["".join(words)] = entry
        spellings[" ".join(words)] = None
    for wood in found.values():
        by_genus.setdefault(wood.botanical.split()[0].casefold(), []).append(wood.species_id)
    return _Index(found, by_words, by_letters, {genus: tuple(ids) for genus, ids in by_genus.items()}, tuple(spellings))


def _close(name: str) -> tuple[str, ...]:
    from difflib import get_close_matches  # only a misspelling needs it

    return tuple(get_close_matches(name, _index().spellings, n=3, cutoff=CLOSENESS)) if len(name) > 2 else ()
