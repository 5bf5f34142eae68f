"""The ways of holding work, and the aids that are never a hold by themselves."""

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Row, Table, Text, load

FAMILIES = ("between-centers", "screwed", "jawed", "fit-glue-suction", "clamped", "aid")
TAIL_WORDS = ("needed", "optional", "none")


class HoldingMethod(NamedTuple):
    """One way of holding, in the trade's words; `tail` tells what part the tailstock plays."""

    id: str
    title: str
    other_names: tuple[str, ...]
    family: str
    suits: str
    drives_by: str
    needs: str
    marks: str
    limited_by: str
    never: str
    caution: str
    tail: str
    source: str

    @property
    def is_aid(self) -> bool:
        """A support that helps a hold and never replaces it."""
        return self.family == "aid"


METHODS = Table(
    "methods.csv",
    (
        Text("id"),
        Text("title"),
        Text("other_names"),
        Text("family", one_of=FAMILIES),
        Text("suits"),
        Text("drives_by"),
        Text("needs"),
        Text("marks"),
        Text("limited_by"),
        Text("never"),
        Text("caution"),
        Text("tail", one_of=TAIL_WORDS),
        Text("source"),
    ),
    key=("id",),
    rows=38,
)
_PROSE = tuple(column.name for column in METHODS.columns if column.name != "other_names")


def _method(row: Row) -> HoldingMethod:
    names = tuple(part.strip() for part in row.text("other_names").split(";"))
    return HoldingMethod(other_names=names, **{key: row.text(key) for key in _PROSE})


@lru_cache(maxsize=1)
def _table() -> dict[str, HoldingMethod]:
    return {row.text("id"): _method(row) for row in load(METHODS)}


@lru_cache(maxsize=1)
def _by_name() -> dict[str, str]:
    names: dict[str, str] = {}
    for entry in _table().values():
        for name in (entry.id, entry.title.lower(), *entry.other_names):
            names.setdefault(_plain(name), entry.id)
    return names


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").split())


def all_methods() -> tuple[HoldingMethod, ...]:
    """Every method and aid, in the order in which the trade groups them."""
    return tuple(_table().values())


def method(name: str) -> HoldingMethod:
    """The method or aid of this id, title or other trade name.

    Raises `KeyError` with a text that names the nearest methods when there is none.
    """
    key = _plain(name)
    names = _by_name()
    if key in names:
        return _table()[names[key]]
    from difflib import get_close_matches

    near = get_close_matches(key, names, n=3, cutoff=0.6)
    hint = ", ".join(dict.fromkeys(names[word] for word in near))
    raise KeyError(f"no holding method is called {name!r}" + (f"; nearest: {hint}" if hint else ""))


def explain(entry: HoldingMethod) -> str:
    """Half a page on one method, as one would tell a colleague at the lathe."""
    lines = [
        entry.title + (" (an aid, never a hold by itself)" if entry.is_aid else ""),
        f"Also called: {', '.join(entry.other_names)}.",
        f"Good for {entry.suits}.",
        f"What drives the work: {entry.drives_by}.",
        f"It needs {entry.needs}.",
        f"Marks it leaves: {entry.marks}.",
        f"What gives out first: {entry.limited_by}.",
        f"Never: {entry.never}.",
        f"Mind this: {entry.caution}.",
        f"Tailstock: {_TAIL_TEXT[entry.tail]}.",
    ]
    return "\n".join(lines)


_TAIL_TEXT = {
    "needed": "part of the hold",
    "optional": "up wherever the cut leaves room",
    "none": "in the way of this one",
}


def list_methods() -> list[dict[str, str]]:
    """Id, title, family and tail of every method and aid."""
    return [
        {"name": entry.id, "title": entry.title, "family": entry.family, "tail": entry.tail} for entry in all_methods()
    ]
