"""The loader takes a table as declared and refuses every damaged copy of it."""

import csv
import io
import re
from collections.abc import Callable
from pathlib import Path

import pytest

from advisor.data import tables, wood_tables
from advisor.data.tables import Number, Table, TableError, Text, parse

SMALL = Table(
    "small.csv",
    (Text("name"), Text("kind", one_of=("hard", "soft")), Number("value", 1, 10),
     Number("other", 0, 5, required=False)),
    key=("name", "kind"), rows=2)
GOOD = ["name,kind,value,other\n", "a,hard,1,\n", "a,soft,10,2.5\n"]


def test_a_sound_table_is_read() -> None:
    first, second = parse(SMALL, GOOD)
    assert (first.text("name"), first.text("kind"), first.number("value")) == ("a", "hard", 1.0)
    assert first.optional("other") is None
    assert first.text("other") == ""
    assert second.optional("other") == 2.5


def test_an_empty_cell_is_no_number() -> None:
    first, _ = parse(SMALL, GOOD)
    with pytest.raises(KeyError, match="other"):
        first.number("other")


@pytest.mark.parametrize(("lines", "message"), [
    ([], "missing column name, kind, value, other"),
    (["name,kind,value\n", *GOOD[1:]], "missing column other"),
    (["name,kind,value,other,more\n", *GOOD[1:]], "extra column more"),
    (["name,kind,other,value\n", *GOOD[1:]], "columns out of order"),
    ([GOOD[0], "a,hard,1\n", GOOD[2]], "row 2: 3 cells, expected 4"),
    ([GOOD[0], GOOD[1], "a,soft,10,2.5,\n"], "row 3: 5 cells, expected 4"),
    ([GOOD[0], ",hard,1,\n", GOOD[2]], "row 2: column name holds '', expected a value"),
    ([GOOD[0], "a,hard, ,\n", GOOD[2]], "row 2: column value holds ' ', expected a value"),
    ([GOOD[0], "a,hard,one,\n", GOOD[2]], "row 2: column value holds 'one', expected a number"),
    ([GOOD[0], "a,hard,nan,\n", GOOD[2]], "row 2: column value holds 'nan', expected a number from 1 to 10"),
    ([GOOD[0], "a,hard,1,inf\n", GOOD[2]], "row 2: column other holds 'inf', expected a number from 0 to 5"),
    ([GOOD[0], "a,hard,10.01,\n", GOOD[2]], "row 2: column value holds '10.01', expected a number from 1 to 10"),
    ([GOOD[0], "a,odd,1,\n", GOOD[2]], "row 2: column kind holds 'odd', expected one of hard, soft"),
    ([GOOD[0], GOOD[1], "a,hard,2,\n"], "row 3: ('a', 'hard') stands in row 2 already"),
    (GOOD[:2], "1 rows, expected 2"),
    ([*GOOD, "b,hard,3,\n"], "3 rows, expected 2"),
    ([GOOD[0], 'a,"hard,1,\n'], "is not comma-separated text"),
])
def test_a_damaged_table_is_refused(lines: list[str], message: str) -> None:
    with pytest.raises(TableError, match=re.escape(message)) as refused:
        parse(SMALL, lines)
    assert str(refused.value).startswith("small.csv")


def test_a_missing_file_is_refused() -> None:
    with pytest.raises(TableError, match=r"small\.csv: cannot be read"):
        tables.load(SMALL)


def test_a_file_that_is_no_text_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "small.csv").write_bytes(b"name,kind,value,other\n\xff,hard,1,\n")
    monkeypatch.setattr(tables, "FOLDER", tmp_path)
    with pytest.raises(TableError, match=r"small\.csv: is not UTF-8 text"):
        tables.load(Table(SMALL.file, SMALL.columns, SMALL.key, SMALL.rows))


def test_a_table_is_read_once() -> None:
    assert tables.load(wood_tables.VARIATION) is tables.load(wood_tables.VARIATION)


def lines_of(table: Table) -> list[str]:
    return (tables.FOLDER / table.file).read_text(encoding="utf-8").splitlines(keepends=True)


def drop_last_row(lines: list[str]) -> list[str]:
    return lines[:-1]


def double_last_row(lines: list[str]) -> list[str]:
    return [*lines[:-2], lines[-1], lines[-1]]


def rename_a_column(lines: list[str]) -> list[str]:
    return ["x" + lines[0], *lines[1:]]


def empty_the_key(lines: list[str]) -> list[str]:
    return [*lines[:-1], "," + lines[-1].split(",", 1)[1]]


def cut_the_last_line(lines: list[str]) -> list[str]:
    return [*lines[:-1], lines[-1].rsplit(",", 1)[0]]


@pytest.mark.parametrize("table", wood_tables.ALL, ids=lambda table: table.file)
@pytest.mark.parametrize(("damage", "message"), [
    (drop_last_row, r"\d+ rows, expected \d+"),
    (double_last_row, "stands in row"),
    (rename_a_column, "missing column"),
    (empty_the_key, r"expected a value|one of"),
    (cut_the_last_line, r"cells, expected \d+|not comma-separated"),
])
def test_every_wood_table_refuses_damage(
    table: Table, damage: Callable[[list[str]], list[str]], message: str
) -> None:
    assert len(parse(table, lines_of(table))) == table.rows
    with pytest.raises(TableError, match=message) as refused:
        parse(table, damage(lines_of(table)))
    assert str(refused.value).startswith(table.file)


@pytest.mark.parametrize("table", wood_tables.ALL, ids=lambda table: table.file)
def test_every_number_of_a_wood_table_is_guarded(table: Table) -> None:
    header, first = lines_of(table)[:2]
    numbers = [(place, column.name) for place, column in enumerate(table.columns) if isinstance(column, Number)]
    for place, name in numbers:
        for bad in ("12x", "-1e9", "1e9"):
            cells = next(csv.reader([first]))
            cells[place] = bad
            line = io.StringIO()
            csv.writer(line).writerow(cells)
            with pytest.raises(TableError, match=f"column {name} holds '{bad}', expected a number"):
                parse(table, [header, line.getvalue()])


def test_every_csv_of_wood_and_fasteners_is_declared() -> None:
    found = {path.name for kind in ("wood_*.csv", "fastener_*.csv") for path in tables.FOLDER.glob(kind)}
    found -= {path.name for path in tables.FOLDER.glob("wood_dust_*.csv")}  # hazards, declared with the materials
    assert found == {table.file for table in wood_tables.ALL}


@pytest.mark.parametrize("table", wood_tables.ALL, ids=lambda table: table.file)
def test_every_row_names_its_source(table: Table) -> None:
    assert all(row.text("source").strip() for row in tables.load(table))
