"""What is taken from each source: found by walking the tables, the constants, the figures and the rules."""

from __future__ import annotations

import ast
import csv
import re
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any, NamedTuple

from advisor.data.tables import FOLDER
from advisor.figure import all_figures
from advisor.sources import all_sources

ROOT = Path(__file__).parent.parent
ROOMS = ("physics", "reckoning", "situation", "models")  # where a number may stand in the program itself
NO_TABLES = ("sources.csv", "source_words.csv", "source_checks.csv")
WORDS = ("source", "unit", "metal")  # columns whose numbers are names
OWN = re.compile(r"\b(derived|exact|numerics)\b", re.I)  # worked out here, defined, or a count of steps


@lru_cache(maxsize=1)
def _words() -> tuple[tuple[str, tuple[str, ...]], ...]:
    with (FOLDER / "source_words.csv").open(encoding="utf-8", newline="") as lines:
        return tuple((row["words"], tuple(row["keys"].split())) for row in csv.DictReader(lines, strict=True))


def keys_in(text: str) -> tuple[str, ...]:
    """The keys of the sources that a text names, by key or in words; empty where it names none."""
    found = [word for word in re.findall(r"[\w-]+", text.lower()) if word in all_sources()]
    found += [key for words, keys in _words() if words.lower() in text.lower() for key in keys]
    return tuple(dict.fromkeys(found))


class Cell(NamedTuple):
    """One row of a table: its file, line, the text of its source cell, and the columns that hold numbers."""

    file: str
    line: int
    source: str
    columns: tuple[str, ...]


def _is_number(text: str) -> bool:
    try:
        float(text)
    except ValueError:
        return False
    return True


def cells() -> Iterator[Cell]:
    """Every row of every table, with the columns in which it has a number; a table without sources has none named."""
    for path in sorted(FOLDER.glob("*.csv")):
        if path.name in NO_TABLES:
            continue
        with path.open(encoding="utf-8", newline="") as lines:
            for line, row in enumerate(csv.DictReader(lines), start=2):
                columns = tuple(name for name, text in row.items() if name not in WORDS and _is_number(text or ""))
                yield Cell(path.name, line, row.get("source") or "", columns)


class Constant(NamedTuple):
    """A number that stands in the program: its file, line, name, and what the comments beside it say."""

    file: str
    line: int
    name: str
    said: str


def _has_number(node: ast.AST) -> bool:
    return any(
        isinstance(part, ast.Constant) and isinstance(part.value, (int, float)) and not isinstance(part.value, bool)
        for part in ast.walk(node)
    )


def _calls(node: ast.AST, names: tuple[str, ...]) -> bool:
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in names


def _said(lines: list[str], first: int, last: int) -> str:
    """The comments on lines `first` to `last` (from 1), and those that head the block in which they stand."""
    start = first - 1
    while start > 0 and lines[start - 1].strip() and not lines[start - 1].startswith(("def ", "class ", "@")):
        start -= 1
    heads = [line for line in lines[start : first - 1] if line.startswith("#")]
    beside = [line.partition("  #")[2] for line in lines[first - 1 : last]]
    return " ".join(filter(None, [*heads, *beside]))


def constants() -> Iterator[Constant]:
    """Every number named at the top of a module of the rooms in which numbers may stand; tables are no constants."""
    for room in ROOMS:
        for path in sorted((ROOT / room).rglob("*.py")):
            text = path.read_text(encoding="utf-8")
            for node in ast.parse(text).body:
                if not isinstance(node, (ast.Assign, ast.AnnAssign)) or node.value is None:
                    continue
                if not _has_number(node.value) or _calls(node.value, ("Table", "TypeVar")):
                    continue
                name = ast.unparse(node.targets[0] if isinstance(node, ast.Assign) else node.target)
                said = _said(text.splitlines(), node.lineno, node.end_lineno or node.lineno)
                yield Constant(path.relative_to(ROOT).as_posix(), node.lineno, name, said)


def checks() -> dict[str, list[str]]:
    """The tests that hold what is taken from a source against something outside this program."""
    found: dict[str, list[str]] = {}
    with (FOLDER / "source_checks.csv").open(encoding="utf-8", newline="") as lines:
        for row in csv.DictReader(lines, strict=True):
            found.setdefault(row["source"], []).append(row["test"])
    return found


def _tables() -> dict[str, dict[str, dict[str, Any]]]:
    found: dict[str, dict[str, dict[str, Any]]] = {}
    for cell in cells():
        for key in keys_in(cell.source):
            entry = found.setdefault(key, {}).setdefault(cell.file, {"table": cell.file, "rows": 0, "columns": []})
            entry["rows"] += 1
            entry["columns"] += [name for name in cell.columns if name not in entry["columns"]]
    return found


def taken() -> dict[str, dict[str, Any]]:
    """By key: rows and columns of tables, constants, figures and rules that rest on it, and the tests of it."""
    from advisor.rulebook import load_book

    tables, tested = _tables(), checks()
    found: dict[str, dict[str, Any]] = {
        key: {
            "tables": list(tables.get(key, {}).values()),
            "constants": [],
            "figures": [],
            "rules": [],
            "checked_by": tested.get(key, []),
        }
        for key in all_sources()
    }
    for constant in constants():
        for key in keys_in(constant.said):
            found[key]["constants"].append(f"{constant.file}: {constant.name}")
    for name, formula in all_figures().items():
        for key in formula.spec.sources:
            found[key]["figures"].append(name)
    for rule in load_book().rules:
        for key in rule.basis:
            found[key]["rules"].append(rule.name)
    return found
