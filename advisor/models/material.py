"""Everything that is turned and is not plain sound wood: what a name can mean, and what is known of it."""

from __future__ import annotations

from functools import lru_cache
from typing import Literal, NamedTuple

from advisor.models.material_page import explain
from advisor.models.material_tables import records
from advisor.models.substance import FAMILIES, NEEDS, REFUSALS, VERDICT_ORDER, Band, LookAlike, Material, Value

__all__ = [
    "FAMILIES",
    "NEEDS",
    "REFUSALS",
    "VERDICT_ORDER",
    "Band",
    "LookAlike",
    "Material",
    "MaterialMatch",
    "Value",
    "all_materials",
    "condition",
    "explain",
    "get",
    "list_materials",
    "resolve",
]

Kind = Literal["one", "several", "none"]


class MaterialMatch(NamedTuple):
    """What a name could mean; `suggestions` are names near it when nothing fits."""

    kind: Kind
    records: tuple[Material, ...]
    suggestions: tuple[str, ...]


# Words that say what shape or color a piece has and not what it is.
_SHAPES = {
    *("a", "an", "the", "of", "piece", "pieces", "rod", "bar", "sheet", "block", "blank", "blanks", "plate", "tube"),
    *("disc", "pen", "slab", "stock", "offcut"),
}
_COLORS = {"black", "white", "red", "blue", "green", "clear", "natural", "colored"}
_FILLERS = frozenset(_SHAPES | _COLORS)


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").replace("_", " ").split())


@lru_cache(maxsize=1)
def _index() -> dict[str, tuple[str, ...]]:
    found: dict[str, list[str]] = {}
    for record in records().values():
        for name in {_plain(word) for word in (record.id, record.title, *record.names, *record.wide_names)}:
            found.setdefault(name, []).append(record.id)
    return {name: tuple(ids) for name, ids in found.items()}


def all_materials() -> tuple[Material, ...]:
    """Every record, materials first and conditions of wood after them."""
    return tuple(records().values())


def get(material_id: str) -> Material:
    """The record of this id; `KeyError` when there is none."""
    return records()[material_id]


def condition(word: str) -> Material | None:
    """The record behind a word of `work.condition`, None for a word that needs none ("sound")."""
    return next((record for record in records().values() if word in record.case_words), None)


def _suggest(key: str) -> tuple[str, ...]:
    from difflib import get_close_matches

    index = _index()
    near = get_close_matches(key, index, n=4, cutoff=0.7)
    words = {word for word in key.split() if len(word) > 3} - _FILLERS
    near += [name for name in index if words & set(name.split())]
    return tuple(dict.fromkeys(near))[:6]


def resolve(name: str) -> MaterialMatch:
    """What a person's word for a material can mean.

    Words of shape and color are left aside ("black acetal rod"); nothing else is guessed: a name that only
    resembles a known one gives "none" with suggestions, because taking one plastic for another can hurt.
    """
    key = _plain(name)
    index = _index()
    bare = " ".join(word for word in key.split() if word not in _FILLERS)
    ids = index.get(key) or index.get(bare) or index.get(bare.removesuffix("s")) or ()
    if not ids:
        return MaterialMatch("none", (), _suggest(bare or key))
    found = tuple(get(one) for one in ids)
    return MaterialMatch("one" if len(found) == 1 else "several", found, ())


def list_materials() -> list[dict[str, str]]:
    """Name, title, family and default verdict of every record."""
    return [
        {"name": record.id, "title": record.title, "family": record.family, "verdict": record.verdict}
        for record in all_materials()
    ]
