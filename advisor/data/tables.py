"""The one loader of the tables in this folder.

A table is declared by its file, its columns, the columns that name a row, and the number of rows it was
committed with. A file that does not fit its declaration is refused as a whole: a number read from a damaged
table is worse than no number.
"""

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import NamedTuple

from advisor.kept import kept

FOLDER = Path(__file__).parent

Cell = str | float | None


class TableError(Exception):
    """A table does not fit its declaration. The message names file, line, column, the cell and what is accepted."""


class Text(NamedTuple):
    """A column of words. `one_of` closes the list of words; an optional cell may stand empty."""

    name: str
    required: bool = True
    one_of: tuple[str, ...] = ()

    def read(self, cell: str) -> Cell:
        if self.one_of and cell not in self.one_of:
            raise ValueError("expected one of " + ", ".join(self.one_of))
        return cell


class Number(NamedTuple):
    """A column of finite numbers between `low` and `high`, both included; an optional cell may stand empty."""

    name: str
    low: float
    high: float
    required: bool = True

    def read(self, cell: str) -> Cell:
        try:
            value = float(cell)
        except ValueError:
            raise ValueError("expected a number") from None
        if not math.isfinite(value) or not self.low <= value <= self.high:
            raise ValueError(f"expected a number from {self.low:g} to {self.high:g}")
        return value


@dataclass(frozen=True, eq=False)
class Table:
    """Declaration of a table: file name, columns in their order, the columns that together name a row, row count.

    A declaration equals only itself, so that finding what was read under it costs nothing.
    """

    file: str
    columns: tuple[Text | Number, ...]
    key: tuple[str, ...]
    rows: int


@dataclass(frozen=True)
class Row:
    """One row of a table, read by column name."""

    cells: dict[str, Cell] = field(hash=False)

    def text(self, name: str) -> str:
        """The words of a cell; an empty optional cell is the empty string."""
        cell = self.cells[name]
        return "" if cell is None else str(cell)

    def number(self, name: str) -> float:
        """The number of a cell. KeyError if the cell is empty or holds words."""
        value = self.optional(name)
        if value is None:
            raise KeyError(name)
        return value

    def optional(self, name: str) -> float | None:
        """The number of a cell, or None where the table prints none."""
        cell = self.cells[name]
        return cell if isinstance(cell, float) else None


@cache
def load(table: Table) -> tuple[Row, ...]:
    """All rows of a table of this folder, checked against its declaration, read once per process.

    Raises TableError: missing or unreadable file, missing, extra or misplaced column, short or long row, empty
    required cell, no number, number out of range, unknown word, the same key twice, wrong number of rows.
    """
    path = str(FOLDER / table.file)

    def read() -> tuple[Row, ...]:
        with open(path, encoding="utf-8", newline="") as lines:
            return parse(table, lines)

    try:
        return kept(path, (path, __file__), read, of=repr(table))
    except OSError as fault:
        raise TableError(f"{table.file}: cannot be read ({fault.strerror})") from fault
    except UnicodeDecodeError as fault:
        raise TableError(f"{table.file}: is not UTF-8 text") from fault


def parse(table: Table, lines: Iterable[str]) -> tuple[Row, ...]:
    """Rows of a table from its lines of text. Raises TableError as `load` does."""
    import csv  # only a table that is not kept needs it

    try:
        rows = tuple(_checked(table, csv.reader(lines, strict=True)))
    except csv.Error as fault:
        raise TableError(f"{table.file}: is not comma-separated text ({fault})") from fault
    if len(rows) != table.rows:
        raise TableError(f"{table.file}: {len(rows)} rows, expected {table.rows}")
    return rows


def _checked(table: Table, reader: Iterator[list[str]]) -> Iterator[Row]:
    _check_header(table, next(reader, []))
    seen: dict[tuple[Cell, ...], int] = {}
    for line, texts in enumerate(reader, start=2):
        if len(texts) != len(table.columns):
            raise TableError(f"{table.file}, row {line}: {len(texts)} cells, expected {len(table.columns)}")
        cells: dict[str, Cell] = {}
        for column, text in zip(table.columns, texts, strict=True):
            try:
                cells[column.name] = _value(column, text)
            except ValueError as fault:
                raise TableError(f"{table.file}, row {line}: column {column.name} holds {text!r}, {fault}") from None
        key = tuple([cells[name] for name in table.key])
        if key in seen:
            raise TableError(f"{table.file}, row {line}: {key} stands in row {seen[key]} already")
        seen[key] = line
        yield Row(cells)


def _check_header(table: Table, header: Sequence[str]) -> None:
    expected = [column.name for column in table.columns]
    if list(header) == expected:
        return
    missing = [name for name in expected if name not in header]
    extra = [name for name in header if name not in expected]
    faults = [f"missing column {', '.join(missing)}"] if missing else []
    faults += [f"extra column {', '.join(extra)}"] if extra else []
    raise TableError(f"{table.file}: {'; '.join(faults) or 'columns out of order'}; expected {', '.join(expected)}")


def _value(column: Text | Number, text: str) -> Cell:
    if text and not text.isspace():
        return column.read(text)
    if column.required:
        raise ValueError("expected a value")
    return None
