"""Each change listed as one that may live can still be made: a row that fits nothing excuses nothing."""

from __future__ import annotations

import ast
import csv
from collections.abc import Iterator
from functools import cache

from tests.house.tree import ROOT


def listed() -> list[dict[str, str]]:
    with (ROOT / "tests/survivors.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@cache
def functions(path: str) -> dict[str, str]:
    """What stands in each function and method of a module, on one line."""
    source = (ROOT / path).read_text(encoding="utf-8")
    lines = [line.strip() for line in source.splitlines()]

    def found(body: list[ast.stmt], above: str) -> Iterator[tuple[str, str]]:
        for node in body:
            if isinstance(node, ast.FunctionDef):
                yield f"{above}{node.name}", " ".join(lines[node.lineno - 1 : node.end_lineno])
            elif isinstance(node, ast.ClassDef):
                yield from found(node.body, f"{above}{node.name}.")

    return dict(found(ast.parse(source).body, ""))


def old_texts(change: str) -> Iterator[str]:
    """What may stand before the change; ` -> ` is also a part of the language."""
    parts = change.split(" -> ")
    for count in range(1, len(parts) + 1):
        yield " -> ".join(parts[:count])


def fits(row: dict[str, str]) -> bool:
    function = functions(row["file"]).get(row["function"], "") if (ROOT / row["file"]).is_file() else ""
    return any(old in function for old in old_texts(row["change"]))


def test_every_listed_change_can_be_made() -> None:
    rows = listed()
    unfit = [f"{row['function']}: {row['change']}" for row in rows if not fits(row)]
    assert unfit == [], "the line has changed since: delete these rows from tests/survivors.csv"
    assert len({(row["file"], row["function"], row["change"]) for row in rows}) == len(rows)


def test_every_listed_change_has_a_reason() -> None:
    assert [row for row in listed() if not row["reason"] or row["reason"].startswith("open")] == []
