"""Every published source once, by key."""

from functools import lru_cache
from pathlib import Path
from typing import NamedTuple

KINDS = ("standard", "handbook", "paper", "practice", "memory", "derived")
FILE = Path(__file__).parent / "data" / "sources.csv"


class Source(NamedTuple):
    """A source as it is printed: title; `detail` says which number is from it and whether it was read or remembered."""

    key: str
    title: str
    detail: str
    kind: str


# The file is open to everybody who cites something new, so its length is not fixed as that of the other tables is.
@lru_cache(maxsize=1)
def all_sources() -> dict[str, Source]:
    """Every source by key. Raises ValueError for a damaged file: wrong columns, a key twice, an unknown kind."""
    import csv

    found: dict[str, Source] = {}
    with FILE.open(encoding="utf-8", newline="") as lines:
        for row in csv.DictReader(lines, strict=True):
            if list(row) != ["key", "title", "detail", "kind"] or None in row.values():
                raise ValueError(f"sources.csv: a row does not have key, title, detail, kind: {row}")
            if row["key"] in found or row["kind"] not in KINDS or not row["title"]:
                raise ValueError(f"sources.csv: {row['key']}: there already, without a title, or kind {row['kind']!r}")
            found[row["key"]] = Source(**row)
    return found


def source(key: str) -> Source:
    """The source of that key. Raises KeyError naming the key where there is none."""
    return all_sources()[key]
