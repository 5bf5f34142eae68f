"""`advisor batch` as a person runs it, and its parts where a process would be slow."""

from __future__ import annotations

import io
import json
import os
import shutil
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Generator, Sequence
from multiprocessing import Pipe
from pathlib import Path

import pexpect
import pytest

from advisor.batch import command, pool
from advisor.batch.one import Outcome
from tests.test_commands import ROOT, advisor

NAMES = ("cracked-log.yaml", "maple-spindle.yaml", "thin-beech-no-window.toml")
ROW = {"verdict": "go", "hold": "spur-drive", "start": 812.0, "ceiling": 1399.0, "governed_by": "whirl",
       "window": "open", "set": 494.6, "reason": ""}  # fmt: skip


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Three cases, a broken one and a file that is no case."""
    for name in NAMES:
        shutil.copy(ROOT / "cases" / name, tmp_path)
    (tmp_path / "broken.json").write_bytes(b"\0\1\2")
    (tmp_path / "notes.txt").write_text("not a case", encoding="utf-8")
    return tmp_path


def test_one_bad_file_stops_nothing_and_the_exit_code_tells(folder: Path) -> None:
    done = advisor("batch", str(folder), "--jobs", "2")
    assert done.returncode == 2
    lines = done.stdout.splitlines()
    assert [line.split()[0] for line in lines[1:5]] == ["broken.json", *NAMES]
    assert "no answer" in lines[1]
    assert "do not mount" in lines[2]
    assert lines[-1] == "4 cases: 1 no answer, 1 do not mount, 1 ask first, 1 go with care"
    assert (
        done.stderr
        == f"{folder / 'broken.json'}: is not text; accepted: a case file that ends in .yaml, .toml or .json\n"
    )
    assert "\x1b[" not in done.stdout + done.stderr


class FakePool:
    """Outcomes at once, in an order that is not that of the files."""

    def __init__(self, files: Sequence[str], jobs: int, whole: bool) -> None:
        assert jobs >= 1
        self.files, self.whole = files, whole

    def outcomes(self) -> Generator[tuple[int, Outcome], None, None]:
        for number in reversed(range(len(self.files))):
            yield number, Outcome(self.files[number], row=ROW, answer='{"verdict": "go"}' if self.whole else None)


class Terminal(io.StringIO):
    """A stream that says it is a terminal."""

    def isatty(self) -> bool:
        return True


def run(folder: Path, *, as_json: bool, out: io.StringIO, errors: io.StringIO) -> int:
    return command.run(str(folder), None, as_json=as_json, plain=True, units="metric", out=out, errors=errors)


@pytest.mark.parametrize("stream", [io.StringIO, Terminal])
def test_lines_of_json_come_in_the_order_of_the_files(
    folder: Path, monkeypatch: pytest.MonkeyPatch, stream: type[io.StringIO]
) -> None:
    monkeypatch.setattr(command, "Pool", FakePool)
    out, errors = stream(), stream()
    assert run(folder, as_json=True, out=out, errors=errors) == 0
    found = [json.loads(line) for line in out.getvalue().splitlines()]
    assert [Path(entry["file"]).name for entry in found] == ["broken.json", *NAMES]
    assert all(entry["answer"] == {"verdict": "go"} for entry in found)
    assert errors.getvalue() == ""


def test_the_table_rounds_limits_down_and_needs_up(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command, "Pool", FakePool)
    out = io.StringIO()
    assert run(folder, as_json=False, out=out, errors=io.StringIO()) == 0
    words = out.getvalue().splitlines()[1].split()
    assert words == ["broken.json", "go", "four-spur", "drive", "810", "1300", "whirl", "500", "N", "(120", "lbf)"]


def test_a_name_cannot_steer_the_terminal(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command, "Pool", FakePool)
    (tmp_path / "a\x1b[2J.yaml").write_text("x", encoding="utf-8")
    out = io.StringIO()
    assert run(tmp_path, as_json=False, out=out, errors=io.StringIO()) == 0
    assert "\x1b" not in out.getvalue()
    assert "a?[2J.yaml" in out.getvalue()


def test_an_interrupt_says_how_far_it_came(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    class Interrupted(FakePool):
        def outcomes(self) -> Generator[tuple[int, Outcome], None, None]:
            yield 0, Outcome(self.files[0], row=ROW)
            raise KeyboardInterrupt

    monkeypatch.setattr(command, "Pool", Interrupted)
    errors = io.StringIO()
    with pytest.raises(KeyboardInterrupt):
        run(folder, as_json=False, out=io.StringIO(), errors=errors)
    assert errors.getvalue() == "1 of 4 cases were done; "


def test_a_worker_answers_until_its_pipe_closes(folder: Path) -> None:
    ours, theirs = Pipe()
    worker = threading.Thread(target=pool._work, args=(theirs, False))
    worker.start()
    ours.send(str(folder / "broken.json"))
    assert ours.recv().fault == "input"
    ours.close()
    worker.join(10)
    assert not worker.is_alive()


@pytest.mark.parametrize("words", [["a", "b"], ["cases", "--jobs", "0"], ["nowhere"]])
def test_wrong_words_are_told_with_exit_code_two(words: list[str]) -> None:
    done = advisor("batch", *words)
    assert done.returncode == 2
    assert done.stdout == ""
    assert done.stderr.strip()
    assert "Traceback" not in done.stderr


def members(session: int) -> list[str]:
    """Command lines of the living processes of a session."""
    found = []
    for entry in Path("/proc").iterdir():
        if not entry.name.isdigit():
            continue
        try:
            after = (entry / "stat").read_text(encoding="utf-8").rpartition(")")[2].split()
            if int(after[3]) == session and after[0] != "Z":
                found.append((entry / "cmdline").read_text(encoding="utf-8").replace("\0", " "))
        except (OSError, ValueError):
            continue
    return found


def many(folder: Path, count: int) -> None:
    for number in range(count):
        shutil.copy(ROOT / "cases" / NAMES[number % len(NAMES)], folder / f"c{number:03}-{NAMES[number % len(NAMES)]}")


@pytest.mark.slow
@pytest.mark.cases
@pytest.mark.parametrize("ending", [signal.SIGINT, signal.SIGTERM, signal.SIGKILL])
def test_however_it_is_stopped_no_process_is_left(tmp_path: Path, ending: signal.Signals) -> None:
    many(tmp_path, 300)
    command_line = [sys.executable, "-m", "advisor.cli", "batch", str(tmp_path), "--jobs", "2", "--json"]
    pipe = subprocess.PIPE
    with subprocess.Popen(command_line, cwd=ROOT, start_new_session=True, stdout=pipe, stderr=pipe, text=True) as run:
        assert run.stdout is not None
        assert run.stderr is not None
        first = run.stdout.readline()
        assert len(members(run.pid)) >= 3
        if ending is signal.SIGINT:
            os.killpg(run.pid, ending)  # as a terminal does: every process of the group gets it
        else:
            os.kill(run.pid, ending)
        rest, told = run.stdout.read(), run.stderr.read()
    assert json.loads(first)["file"].endswith("c000-cracked-log.yaml")
    lines = rest.splitlines(keepends=True)
    whole = lines if ending is signal.SIGINT else [line for line in lines if line.endswith("\n")]  # else cut anywhere
    assert all(json.loads(line) for line in whole)
    for _ in range(100):
        if not members(run.pid):
            break
        time.sleep(0.1)
    assert members(run.pid) == []
    if ending is signal.SIGINT:
        assert run.returncode == 130
        assert "of 300 cases were done; stopped" in told
        assert "Traceback" not in told


@pytest.mark.slow
@pytest.mark.cases
def test_a_process_that_dies_costs_one_file(tmp_path: Path) -> None:
    many(tmp_path, 4)
    files = sorted(str(path) for path in tmp_path.iterdir())
    working = pool.Pool(files, 1, whole=False)
    found = {}
    for number, outcome in working.outcomes():
        found[number] = outcome
        if number == 0:
            working.workers[0].process.kill()
    assert [found[number].fault for number in range(4)] == [None, "program", None, None]
    assert found[1].error == f"{files[1]}: {pool.GONE}"


@pytest.mark.slow
@pytest.mark.cases
def test_a_terminal_sees_a_bar_and_then_the_table(folder: Path) -> None:
    child = pexpect.spawn(
        sys.executable, ["-m", "advisor.cli", "batch", str(folder)], cwd=str(ROOT), encoding="utf-8", timeout=60,
        dimensions=(40, 160), env={**os.environ, "TERM": "xterm"},
    )  # fmt: skip
    child.expect("cases.*0/4")
    child.expect("DO NOT|do not mount")
    child.expect(pexpect.EOF)
    assert "4 cases: 1 no answer" in child.before
    child.close()
    assert child.exitstatus == 2
