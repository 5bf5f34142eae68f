"""One file of a folder: answered, or said what is wrong with it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from advisor.advice import whole
from advisor.batch.one import INPUT, PROGRAM, Outcome, answer_file, case_files, exit_code
from advisor.quantity import FigureInputError
from advisor.reading import InputFault

GOOD = "work: {material: sugar maple, diameter: 3 in, length: 12 in}\n"


def test_the_files_are_those_of_a_case_by_name(tmp_path: Path) -> None:
    for name in ("b.yaml", "a.toml", "c.JSON", "d.yml", "notes.txt", ".hidden.yaml"):
        (tmp_path / name).write_text(GOOD, encoding="utf-8")
    (tmp_path / "below").mkdir()
    (tmp_path / "below" / "e.yaml").write_text(GOOD, encoding="utf-8")
    assert [Path(name).name for name in case_files(str(tmp_path))] == ["a.toml", "b.yaml", "c.JSON", "d.yml"]


def test_a_folder_that_is_none_or_holds_no_case_is_refused(tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("x", encoding="utf-8")
    for folder, why in [("nowhere", "cannot be read as a folder (No such file or directory)"),
                        (str(tmp_path / "notes.txt"), "cannot be read as a folder (Not a directory)"),
                        ("a\0b", "cannot be read as a folder (no folder has such a name)"),
                        (str(tmp_path), "holds no case file")]:  # fmt: skip
        with pytest.raises(InputFault) as fault:
            case_files(folder)
        assert f"{why}; accepted: a folder with case files (.yaml, .toml, .json)" in str(fault.value)


def test_a_case_gives_its_row_and_where_asked_for_the_whole_answer(tmp_path: Path) -> None:
    path = tmp_path / "a.yaml"
    path.write_text(GOOD, encoding="utf-8")
    short, full = answer_file(str(path), whole=False), answer_file(str(path), whole=True)
    assert short.row == full.row
    assert short.answer is None
    assert full.row is not None
    told = json.loads(full.line)
    assert told["file"] == str(path)
    assert told["answer"]["verdict"] == full.row["verdict"]
    assert told["answer"]["speed"]["ceiling_rpm"] == full.row["ceiling"]


@pytest.mark.parametrize(
    ("raw", "message"),
    [
        (bytes(range(256)), "is not text"),
        (b"work: {material: ash}\n" * 500_000, "is too large for a case; accepted: at most 64 kB"),
        (b"work: {material: ash}\n", "work.diameter: is missing"),
        (b"", "is empty"),
    ],
    ids=["binary", "huge", "half a case", "empty"],
)
def test_a_bad_file_becomes_its_message(tmp_path: Path, raw: bytes, message: str) -> None:
    path = tmp_path / "bad.yaml"
    path.write_bytes(raw)
    found = answer_file(str(path), whole=True)
    assert found.row is None
    assert found.fault == INPUT
    assert message in (found.error or "")
    assert json.loads(found.line) == {"file": str(path), "error": found.error, "fault": "input"}


def test_a_fault_of_the_program_becomes_words_too(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object, **__: object) -> object:
        raise RuntimeError("bent")

    monkeypatch.setattr(whole, "answer_for", broken)
    path = tmp_path / "a.yaml"
    path.write_text(GOOD, encoding="utf-8")
    found = answer_file(str(path), whole=False)
    assert found.fault == PROGRAM
    assert found.error == f"{path}: RuntimeError: bent; no advice was given"


def test_a_number_that_no_formula_takes_is_wrong_input(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refusing(*_: object, **__: object) -> object:
        raise FigureInputError("taper", 9.0, "a number from 0 to 7")

    monkeypatch.setattr(whole, "answer_for", refusing)
    path = tmp_path / "a.yaml"
    path.write_text(GOOD, encoding="utf-8")
    found = answer_file(str(path), whole=False)
    assert (found.fault, found.error) == (INPUT, f"{path}: taper: 9.0 was given; accepted: a number from 0 to 7")


def test_the_exit_code_tells_the_worst() -> None:
    good, wrong = Outcome("a", row={}), Outcome("b", error="x", fault=INPUT)
    broken = Outcome("c", error="x", fault=PROGRAM)
    assert exit_code([good, good]) == 0
    assert exit_code([good, wrong]) == 2
    assert exit_code([wrong, broken, good]) == 1
