"""Files that are good, and files that are not what they seem."""

import io
import os
from pathlib import Path

import pytest

from advisor.reading import InputFault, Problem, read_case
from tests.reading.texts import GOOD_YAML, only

JSON = '{"work": {"material": "ash", "diameter": "10 in", "length": "3 in"}}'
TOML = '# words\n\n[work]\nmaterial = "ash"\ndiameter = "10 in"\nlength = "3 in"\n'


def file_problem(path: Path | str) -> Problem:
    with pytest.raises(InputFault) as caught:
        read_case(str(path))
    return only(caught.value.problems)


def make(folder: Path, name: str, raw: bytes) -> Path:
    path = folder / name
    path.write_bytes(raw)
    return path


@pytest.mark.parametrize(
    ("name", "text"),
    [("a.yaml", GOOD_YAML), ("a.yml", GOOD_YAML), ("a.YAML", GOOD_YAML), ("a.toml", TOML), ("a.json", JSON)],
)
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
def test_the_ending_names_the_format(tmp_path: Path, name: str, text: str, mark: bytes) -> None:
    path = make(tmp_path, name, mark + text.replace("\n", "\r\n").encode())
    assert read_case(str(path)).work.diameter == 254


@pytest.mark.parametrize("text", [GOOD_YAML, TOML, JSON, "\n" + JSON, 'title = "x"\n' + TOML])
def test_standard_input_shows_its_format_by_its_first_signs(text: str) -> None:
    assert read_case("-", (), io.StringIO(text)).work.diameter == 254
    assert read_case("-", (), io.TextIOWrapper(io.BytesIO(text.encode()))).work.diameter == 254


def test_standard_input_is_the_default_stream(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", io.StringIO(GOOD_YAML))
    assert read_case("-", ["work.length=4 in"]).work.length == 101.6


def test_errors_on_standard_input_name_it() -> None:
    with pytest.raises(InputFault, match=r"standard input, line 7, column 9: work\.wall: 'x' is not a number"):
        read_case("-", (), io.StringIO(GOOD_YAML + "  wall: x\n"))
    with pytest.raises(InputFault, match="standard input: is not UTF-8 text"):
        read_case("-", (), io.StringIO("\ud800"))
    with pytest.raises(InputFault, match="standard input: is too large"):
        read_case("-", (), io.TextIOWrapper(io.BytesIO(b"a" * 10**7)))


BAD = [
    ("a.yaml", b"", "is empty"),
    ("a.yaml", b"\xef\xbb\xbf \r\n", "is empty"),
    ("a.yaml", b"work:\0", "is not text"),
    ("a.json", bytes(range(256)), "is not text"),
    ("a.yaml", "work: {}".encode("utf-16"), "is saved as UTF-16"),
    ("a.yaml", b"\xfe\xff" + "work: {}".encode("utf-16-be"), "is saved as UTF-16"),
    ("a.txt", GOOD_YAML.encode(), "has an ending that names no format"),
    ("a", GOOD_YAML.encode(), "has an ending that names no format"),
    ("a.yaml", b"#" * (64 * 1024 + 1), "is too large for a case"),
]


@pytest.mark.parametrize(("name", "raw", "message"), BAD, ids=[row[-1] for row in BAD])
def test_a_bad_file_is_refused(tmp_path: Path, name: str, raw: bytes, message: str) -> None:
    path = make(tmp_path, name, raw)
    found = file_problem(path)
    assert found.file == str(path)
    assert found.message == message
    assert found.accepted


def test_bytes_that_are_no_text_are_placed(tmp_path: Path) -> None:
    found = file_problem(make(tmp_path, "a.yaml", b"title: x\nwork: \xff\n"))
    assert (found.line, found.column, found.message) == (2, 7, "is not UTF-8 text")


def test_a_large_file_is_refused(tmp_path: Path) -> None:
    path = make(tmp_path, "large.yaml", b"a: b\n" * 2_000_000)
    assert str(file_problem(path)).endswith("large.yaml: is too large for a case; accepted: at most 64 kB")


def test_a_file_larger_than_the_memory_is_refused_without_being_read(tmp_path: Path) -> None:
    path = make(tmp_path, "vast.yaml", b"a: b\n")
    os.truncate(path, 2**40)  # a hole on the disk
    assert str(file_problem(path)).endswith("vast.yaml: is too large for a case; accepted: at most 64 kB")


def test_a_missing_file_names_its_neighbor(tmp_path: Path) -> None:
    make(tmp_path, "ash-bowl.yaml", GOOD_YAML.encode())
    found = file_problem(tmp_path / "ash-bowls.yaml")
    assert (found.message, found.nearest) == ("there is no such file", "ash-bowl.yaml")
    assert file_problem(tmp_path / "none" / "ash-bowls.yaml").nearest is None


def test_what_is_no_file_is_refused(tmp_path: Path) -> None:
    assert file_problem(tmp_path).message == "is a folder"
    os.mkfifo(tmp_path / "pipe.yaml")
    pipe = file_problem(tmp_path / "pipe.yaml")
    assert (pipe.message, pipe.accepted) == ("is not a plain file", "a case file that ends in .yaml, .toml or .json")
    assert file_problem("a\0b.yaml").message == "cannot be read (no file has such a name)"
    assert file_problem("a" * 5000 + ".yaml").message == "cannot be read (File name too long)"
