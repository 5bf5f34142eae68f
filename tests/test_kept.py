"""What is kept beside its source is never older than the source, and never a fault."""

from __future__ import annotations

import os
import pickle
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from advisor.kept import kept
from advisor.rulebook import Book, kept_book, load_book


@pytest.fixture(autouse=True)
def _writes_bytecode(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "dont_write_bytecode", False)


@pytest.fixture
def source(tmp_path: Path) -> Path:
    (tmp_path / "table.csv").write_text("one")
    return tmp_path / "table.csv"


def read(source: Path, of: str = "") -> tuple[str, bool]:
    """What is there, and whether the source itself was read for it."""
    looked = []

    def make() -> str:
        looked.append(True)
        return source.read_text()

    return kept(str(source), [str(source)], make, of), bool(looked)


def files(source: Path) -> list[Path]:
    return list((source.parent / "__pycache__").iterdir())


def test_the_second_time_it_is_kept(source: Path) -> None:
    assert read(source) == ("one", True)
    assert read(source) == ("one", False)


def test_a_changed_source_is_read_again(source: Path) -> None:
    read(source)
    source.write_text("another")
    assert read(source) == ("another", True)


def test_a_source_of_the_same_size_is_read_again(source: Path) -> None:
    read(source)
    source.write_text("two")
    os.utime(source, ns=(1, 1))
    assert read(source) == ("two", True)


def test_another_declaration_reads_again(source: Path) -> None:
    read(source, "rows=1")
    assert read(source, "rows=2") == ("one", True)


def test_a_folder_is_all_its_python_files(tmp_path: Path) -> None:
    (tmp_path / "rules" / "thrust").mkdir(parents=True)
    rule = tmp_path / "rules" / "thrust" / "no_window.py"
    rule.write_text("1")
    count: Iterator[int] = iter(range(9))

    def now() -> int:
        return kept(str(tmp_path / "book"), [str(tmp_path / "rules")], lambda: next(count))

    assert [now(), now()] == [0, 0]
    rule.write_text("12")
    assert now() == 1
    (tmp_path / "rules" / "thrust" / "another.py").write_text("3")
    assert now() == 2
    rule.unlink()
    assert [now(), now()] == [3, 3]
    (tmp_path / "rules" / "thrust" / "note.txt").write_text("no rule")
    assert now() == 3


@pytest.mark.parametrize(
    "damage", [b"", b"nonsense", b"\x80\x05", pickle.dumps("one"), pickle.dumps((["x"], "two"))], ids=range(5)
)
def test_a_damaged_copy_is_no_fault(source: Path, damage: bytes) -> None:
    read(source)
    (copy,) = files(source)
    copy.write_bytes(damage)
    assert read(source) == ("one", True)
    assert read(source) == ("one", False)


def test_nothing_is_written_where_python_writes_no_bytecode(source: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    assert [read(source), read(source)] == [("one", True)] * 2
    assert not (source.parent / "__pycache__").exists()


def test_a_place_that_takes_no_file_is_no_fault(source: Path) -> None:
    (source.parent / "__pycache__").write_text("a file where the folder should be")
    assert [read(source), read(source)] == [("one", True)] * 2


def test_a_copy_that_cannot_be_put_in_place_leaves_no_draft(source: Path) -> None:
    read(source)
    (copy,) = files(source)
    copy.unlink()
    copy.mkdir()
    assert read(source) == ("one", True)
    assert files(source) == [copy]


def test_what_reading_raises_is_raised(tmp_path: Path) -> None:
    def fail() -> str:
        raise ValueError("damaged")

    with pytest.raises(ValueError, match="damaged"):
        kept(str(tmp_path / "table"), [str(tmp_path)], fail)


def test_a_changed_rule_is_seen_by_the_next_process(tmp_path: Path) -> None:
    shelf = tmp_path / "shelf"
    (shelf / "thrust").mkdir(parents=True)
    for folder in (shelf, shelf / "thrust"):
        (folder / "__init__.py").touch()
    text = "from advisor.rulebook import Effect, Rule, fact\nrule = Rule(fact('thrust'), Effect.NOTE, says={!r})\n"
    script = "from advisor.rulebook import kept_book; print([rule.says for rule in kept_book('shelf')])"
    environment = {**os.environ, "PYTHONPATH": str(tmp_path)}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)

    def says() -> str:
        done = subprocess.run(
            [sys.executable, "-c", script], env=environment, capture_output=True, text=True, check=True
        )
        return done.stdout.strip()

    rule = shelf / "thrust" / "slack.py"
    rule.write_text(text.format("Wind it up."))
    assert [says(), says()] == ["['Wind it up.']"] * 2
    assert list((shelf / "__pycache__").glob("book*.kept"))
    rule.write_text(text.format("Wind it up again."))
    assert says() == "['Wind it up again.']"


def test_the_kept_book_is_the_book_without_its_pages() -> None:
    def told(book: Book) -> list[tuple[object, ...]]:
        return [(rule.name, rule.topic, rule.when, rule.effect, rule.says, rule.do, rule.opens) for rule in book]

    kept_copy = kept_book()
    assert told(kept_copy) == told(load_book())
    assert not any(rule.doc for rule in kept_copy)
    assert all(rule.doc for rule in load_book())


def test_a_kept_book_stands_beside_its_rules_and_is_read_only_once(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shelf = tmp_path / "other_shelf"
    (shelf / "thrust").mkdir(parents=True)
    for folder in (shelf, shelf / "thrust"):
        (folder / "__init__.py").touch()
    text = "from advisor.rulebook import Effect, Rule, fact\nrule = Rule(fact('thrust'), Effect.NOTE, says={!r})\n"
    (shelf / "thrust" / "slack.py").write_text(text.format("Wind it up."))
    monkeypatch.syspath_prepend(tmp_path)
    assert [rule.says for rule in kept_book("other_shelf")] == ["Wind it up."]
    (copy,) = (shelf / "__pycache__").glob("book.*.kept")
    copy.write_bytes(copy.read_bytes().replace(b"Wind it up.", b"Let it be!!"))
    assert [rule.says for rule in kept_book("other_shelf")] == ["Let it be!!"]
    (shelf / "thrust" / "slack.py").write_text(text.format("Wind it up again."))
    assert [rule.says for rule in kept_book("other_shelf")] == ["Wind it up again."]
