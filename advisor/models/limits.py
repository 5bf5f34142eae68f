"""The limits on speed and thrust by the name they have in an answer: what happens above each, what moves it."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Row, Table, Text, load

LIMITS = Table(
    "limits.csv",
    (
        Text("limit"),
        Text("of", one_of=("speed", "thrust")),
        Text("what_happens"),
        Text("what_moves_it"),
        Text("figures", required=False),
        Text("source"),
    ),
    key=("limit",),
    rows=19,
)


class NamedLimit(NamedTuple):
    """One limit in plain words, and the names of the figures it is worked out from."""

    name: str
    of: str
    what_happens: str
    what_moves_it: str
    figures: tuple[str, ...]


@lru_cache(maxsize=1)
def _table() -> dict[str, NamedLimit]:
    return {row.text("limit"): _limit(row) for row in load(LIMITS)}


def _limit(row: Row) -> NamedLimit:
    figures = tuple(row.text("figures").split())
    return NamedLimit(row.text("limit"), row.text("of"), row.text("what_happens"), row.text("what_moves_it"), figures)


def limit_names() -> tuple[str, ...]:
    """Every limit an answer may name."""
    return tuple(_table())


def limit_page(name: str) -> str | None:
    """The limit in plain words; None where no limit has that name."""
    entry = _table().get(name)
    if entry is None:
        return None
    lines = [f"{name}: a limit on {entry.of}", "", entry.what_happens, f"What moves it: {entry.what_moves_it}."]
    if entry.figures:
        lines.append(f"Figures behind it: {', '.join(entry.figures)}.")
    return "\n".join(lines)
