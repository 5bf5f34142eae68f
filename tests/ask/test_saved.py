"""An interview kept while it is under way."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from advisor.ask.saved import Said, Saved, place

SAID = [Said("size", ("work.diameter", "work.length"), "3 in x 18 in"), Said("seen", ("work.condition",), "")]


def test_what_was_said_comes_back_and_nothing_is_left_beside_it(tmp_path: Path) -> None:
    saved = Saved(tmp_path / "below" / "x.json", ["work.material=ash"])
    assert saved.load() == []
    assert saved.save(SAID) is None
    assert saved.load() == SAID
    assert [path.name for path in (tmp_path / "below").iterdir()] == ["x.json"]
    saved.remove()
    assert saved.load() == []
    saved.remove()


def test_another_start_is_another_interview(tmp_path: Path) -> None:
    Saved(tmp_path / "x", ["work.material=ash"]).save(SAID)
    assert Saved(tmp_path / "x", ["work.material=oak"]).load() == []


@pytest.mark.parametrize(
    "raw",
    [b"", b"{", b"[]", b"\xff\xfe", b'{"interview": 2}', b'{"interview": 1, "start": []}', b"[" * 100_000,
     b'{"interview": 1, "start": [], "answers": [{"question": "size"}]}',
     b'{"interview": 1, "start": [], "answers": [3]}'],
)  # fmt: skip
def test_a_damaged_file_is_no_interview(tmp_path: Path, raw: bytes) -> None:
    (tmp_path / "x").write_bytes(raw)
    assert Saved(tmp_path / "x", []).load() == []


def test_where_nothing_can_be_written_the_reason_is_told(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    for path in (tmp_path / "file" / "x", tmp_path / ("x" * 300), Path("/proc/nowhere/x")):
        saved = Saved(path, [])
        assert saved.save(SAID)
        saved.remove()


def test_its_place_is_beside_the_case_file_or_where_state_belongs(monkeypatch: pytest.MonkeyPatch) -> None:
    assert place("shop/leg.yaml") == Path("shop/.leg.yaml.interview")
    monkeypatch.setenv("XDG_STATE_HOME", "/var/state")
    assert place(None) == Path("/var/state/advisor/interview.json")
    monkeypatch.delenv("XDG_STATE_HOME")
    monkeypatch.setenv("HOME", "/home/turner")
    assert place(None) == Path("/home/turner/.local/state/advisor/interview.json")


def test_the_file_is_plain_to_read(tmp_path: Path) -> None:
    Saved(tmp_path / "x", []).save(SAID)
    found = json.loads((tmp_path / "x").read_text(encoding="utf-8"))
    assert found["answers"][0]["line"] == "3 in x 18 in"
