"""Every number in data, program, figures and rules has a source or says that it has none; every source says its use."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any

import pytest

from advisor.cli import main
from advisor.figure import all_figures
from advisor.report import cited
from advisor.report.cited import OWN, Cell, cells, constants, keys_in, taken
from advisor.report.listing import entries, source_lines
from advisor.rulebook import load_book
from advisor.sources import all_sources
from tests.house.checked import TABLE, declared, files, table

# Read or remembered to see that nothing speaks against the models; no number of theirs is used.
BACKGROUND = {
    "chuchala-2014", "eyma-2004", "kivimaa-1950", "franz-1958", "koch-1964", "axelsson-1993", "porankiewicz-2011",
    "en-204", "en-205", "nema-li-1",
}  # fmt: skip
ONLY_CHECKS = {"turning-and-boring-1914"}
# Published, and only words or flags are taken from them, read once: there is nothing to compare.
UNCHECKED = {"iarc", "hsdb-red-cedar", "botanical-dermatology"}
NO_NUMBERS = ("material_names.csv", "material_questions.csv")  # names and questions alone; "6061" is a name


@lru_cache(maxsize=1)
def used() -> dict[str, dict[str, Any]]:
    """What is taken from each source, walked once."""
    return taken()


def faults_of(found: Iterator[Cell]) -> list[str]:
    """Rows that hold something and name no source."""
    return [
        f"{cell.file}, line {cell.line}: {cell.source!r}"
        for cell in found
        if not keys_in(cell.source) and not (cell.file in NO_NUMBERS and set(cell.columns) <= {"name"})
    ]


def test_every_row_of_every_table_names_a_source_that_is_there() -> None:
    found = list(cells())
    assert len(found) > 3500
    assert {cell.file for cell in found} > {"wood_strength.csv", "material_values.csv", "bands.csv", "friction.csv"}
    assert faults_of(iter(found)) == []


def test_a_row_without_a_source_is_found() -> None:
    assert faults_of(iter([Cell("x.csv", 2, "somebody's book", ("a",))])) == ["x.csv, line 2: \"somebody's book\""]
    assert faults_of(iter([Cell("material_names.csv", 2, "", ("a",))])) != []


@pytest.mark.parametrize(
    ("text", "keys"),
    [
        ("FPL-GTR-282 (2021) Table 5-3b", ("wood-handbook-5-3",)),
        ("Table 4-3 from memory", ("memory", "wood-handbook-4-3")),
        ("to-1-1a-9 hss-speed-table", ("to-1-1a-9", "hss-speed-table")),
        ("to-1-1a-9-magnesium", ("to-1-1a-9-magnesium",)),
        ("common practice, no source", ("common-practice",)),
        ("Wood Handbook, chapter 10", ("wood-handbook-10",)),
        ("a table in a book", ()),
        ("", ()),
    ],
)
def test_what_a_text_names(text: str, keys: tuple[str, ...]) -> None:
    assert set(keys_in(text)) == set(keys)


def test_every_figure_and_every_rule_rests_on_sources_that_are_there() -> None:
    for name, formula in all_figures().items():
        assert formula.spec.sources, name
        assert set(formula.spec.sources) <= set(all_sources()), name
    for rule in load_book().rules:
        assert rule.basis, rule.name
        assert set(rule.basis) <= set(all_sources()), rule.name


def unmarked() -> list[str]:
    """Numbers of figures and reckoning whose comment says neither source nor that there is none."""
    return [
        f"{constant.file}:{constant.line} {constant.name}"
        for constant in constants()
        if not constant.file.startswith("models/") and not keys_in(constant.said) and not OWN.search(constant.said)
    ]


def test_every_number_in_figures_and_reckoning_says_where_it_is_from() -> None:
    assert len(list(constants())) > 250
    assert unmarked() == []


def test_a_number_that_says_nothing_is_found(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    room = tmp_path / "physics"
    room.mkdir()
    text = '''"""A page."""
MUTE = 4.2
LOUD = 4.3  # of the whole; memory
# derived
HEADED: float = 4.4
WORDS = ("a", "b")
TABLE = Table("a.csv", rows=3)

# the next block
LONE = {
    "a": 1,
}
'''
    (room / "one.py").write_text(text, encoding="utf-8")
    monkeypatch.setattr(cited, "ROOT", tmp_path)
    assert unmarked() == ["physics/one.py:2 MUTE", "physics/one.py:10 LONE"]


@pytest.mark.parametrize("path", files(), ids=[path.stem for path in files()])
def test_a_file_of_checks_declares_its_sources_and_names_them_in_words(path: Path) -> None:
    """By the key, by the first words of the title, or by a figure or table that rests on the source."""
    keys, text = declared(path), path.read_text(encoding="utf-8")
    assert keys
    assert len(set(keys)) == len(keys)
    body = re.sub(r"^SOURCES = \(.*?\)$", "", text, count=1, flags=re.M | re.S).lower()
    for side in re.findall(r"\w+\.csv", body):
        beside = path.parent / side
        body += beside.read_text(encoding="utf-8").lower() if beside.exists() else ""
    uses = used()
    for key in keys:
        title = " ".join(re.split(r"[,:]", all_sources()[key].title)[0].split()[:2]).lower()
        names = [key, title, *uses[key]["figures"], *(name.replace("-", "_") for name in uses[key]["figures"])]
        names += [one["table"].removesuffix(".csv") for one in uses[key]["tables"]]
        assert any(name.lower() in body for name in names), key


def test_the_table_of_checks_is_what_the_files_declare() -> None:
    assert TABLE.read_text(encoding="utf-8") == table(), "python -m tests.house.checked writes it"


def test_every_source_is_used_for_something() -> None:
    uses = used()
    parts = ("tables", "constants", "figures", "rules")
    idle = {key for key, use in uses.items() if not any(use[part] for part in parts)}
    assert idle == BACKGROUND | ONLY_CHECKS
    assert {key for key in idle if uses[key]["checked_by"]} == ONLY_CHECKS


def test_what_is_published_and_used_is_checked_unless_named_here() -> None:
    """Handbooks, papers and standards from which numbers are taken without a check against the outside."""
    uses = used()
    published = {key for key, entry in all_sources().items() if entry.kind in ("handbook", "paper", "standard")}
    unchecked = {key for key in published - BACKGROUND if not uses[key]["checked_by"]}
    assert unchecked == UNCHECKED


def test_rows_and_columns_are_counted_in_the_tables() -> None:
    strengths = next(one for one in used()["wood-handbook-5-3"]["tables"] if one["table"] == "wood_strength.csv")
    assert strengths["rows"] == 386
    assert {"bending_psi", "crushing_psi", "side_hardness_lbf"} <= set(strengths["columns"])
    assert used()["en-338"]["constants"] == [
        f"physics/burst.py: {name}" for name in ("SIZE_REFERENCE_MM", "SIZE_POWER", "SIZE_FLOOR", "TOUGHNESS_LOW",
                                                 "TOUGHNESS_DIVISOR", "EDGE_CRACK")
    ]  # fmt: skip


def test_the_page_says_what_is_taken_and_what_checks_it() -> None:
    text = "\n".join(source_lines(entries("sources")))
    assert "no test against the outside" in text
    assert "nothing is taken from it" in text
    assert "tests/validation/test_wood_tables.py" in text
    assert max(len(line) for line in text.splitlines() if line.startswith("    ")) <= 100


def test_the_command_lists_them_as_text_and_as_json(capsys: pytest.CaptureFixture[str]) -> None:
    line = [sys.executable, "-m", "advisor.cli", "list", "sources"]
    found = json.loads(subprocess.run([*line, "--json"], capture_output=True, text=True, check=True).stdout)
    assert main(["list", "sources"]) == 0
    text = capsys.readouterr().out
    assert [entry["name"] for entry in found] == list(all_sources())
    assert all(f"{entry['name']}: {entry['title']}" in text for entry in found)
    assert set(found[0]) == {"name", "title", "kind", "detail", "tables", "constants", "figures", "rules", "checked_by"}
