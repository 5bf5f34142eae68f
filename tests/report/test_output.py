"""Files are written whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from advisor.report.output import OutputFault, ending_of, write_whole


@pytest.mark.parametrize(("path", "ending"), [("a.PDF", ".pdf"), ("b/c.svg", ".svg")])
def test_the_ending_counts_in_any_case(path: str, ending: str) -> None:
    assert ending_of(path, (".pdf", ".svg"), "sheet") == ending


@pytest.mark.parametrize(
    ("path", "endings", "said"),
    [
        (None, (".pdf", ".svg"), "sheet needs -o FILE, a name ending in .pdf or .svg"),
        ("", (".svg",), "sheet needs -o FILE, a name ending in .svg"),
        (
            "x.doc",
            (".html", ".pdf", ".svg"),
            "-o x.doc: sheet writes no such file; a name ending in .html, .pdf or .svg",
        ),
        ("svg", (".svg",), "-o svg: sheet writes no such file"),
    ],
)
def test_other_endings_are_refused_with_what_is_accepted(path: str | None, endings: tuple[str, ...], said: str) -> None:
    with pytest.raises(OutputFault) as caught:
        ending_of(path, endings, "sheet")
    assert str(caught.value).startswith(said)


def test_a_file_is_replaced_at_once_and_nothing_is_left_beside_it(tmp_path: Path) -> None:
    target = tmp_path / "x.svg"
    target.write_text("old", encoding="utf-8")
    write_whole(str(target), "new €")
    assert target.read_bytes() == "new €".encode()
    write_whole(str(target), b"bytes")
    assert target.read_bytes() == b"bytes"
    assert list(tmp_path.iterdir()) == [target]


@pytest.mark.parametrize("name", ["missing/x.svg", "file/x.svg", "folder.svg", "a\0b.svg", f"{'x' * 300}.svg"])
def test_a_target_that_cannot_be_written_is_said_and_nothing_changes(tmp_path: Path, name: str) -> None:
    (tmp_path / "file").write_text("a file", encoding="utf-8")
    (tmp_path / "folder.svg").mkdir()
    before = sorted(path.name for path in tmp_path.rglob("*"))
    with pytest.raises(OutputFault, match=r"cannot be written \(.+\); nothing was changed"):
        write_whole(str(tmp_path / name), "new")
    assert sorted(path.name for path in tmp_path.rglob("*")) == before
