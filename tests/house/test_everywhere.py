"""Where a process may find itself: closed streams, a full disk, odd names, nothing in the environment, no network."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from advisor.cli import main
from tests.house.tree import ROOT, copy_to

ADVISOR = f"'{sys.executable}' -m advisor.cli"
CASE = str(ROOT / "cases" / "maple-spindle.yaml")
ODD_NAMES = [
    "a spindle.yaml",
    "Ahorn gr\u00fcn \u6728.yaml",
    r"C:\cases\maple.yaml",
    r"\\shed\lathe\maple.yaml",
    "-maple.yaml",
]
REFUSE_NETWORK = """
import sys
def look(event, arguments):
    if event.startswith("socket.") and event != "socket.gethostname":
        raise PermissionError(f"{event}: this machine has no network")
sys.addaudithook(look)
"""


def shell(command: str, folder: Path = ROOT, **environment: str) -> subprocess.CompletedProcess[str]:
    """Run a line of the shell in a folder, with the program of this repository."""
    return subprocess.run(
        ["bash", "-c", f"set -o pipefail; {command}"],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT), **environment},
        capture_output=True,
        encoding="utf-8",
        check=False,
        timeout=120,
    )


@pytest.mark.parametrize(
    ("line", "status", "told"),
    [
        (f"{ADVISOR} advise - <&-", 2, "standard input: is empty; accepted: a case"),
        (f"{ADVISOR} ask work.material=ash <&-", 2, "ask: needs a terminal"),
        (f"{ADVISOR} mount {CASE} >&-", 0, ""),
        (f"{ADVISOR} mount nowhere.yaml <&- >&- 2>&-", 2, ""),
        (f"{ADVISOR} mount {CASE} >/dev/full", 1, "No space left on device"),
        (f"{ADVISOR} list rules >/dev/full", 1, "No space left on device"),
        (f"{ADVISOR} mount {CASE} | true", 0, ""),
    ],
)
def test_a_stream_that_is_closed_or_full_is_told_plainly(line: str, status: int, told: str) -> None:
    ran = shell(line)
    assert (ran.returncode, ran.stdout) == (status, "")
    assert told in ran.stderr
    assert ran.stderr.count("\n") <= 1, ran.stderr  # one line, no traceback


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with an odd name, to stand in."""
    place = tmp_path / "a folder with \u00fcml\u00e4uts"
    place.mkdir()
    monkeypatch.chdir(place)
    return place


@pytest.mark.parametrize("name", ODD_NAMES)
def test_a_name_is_a_name_whatever_its_letters(folder: Path, name: str, capsys: pytest.CaptureFixture[str]) -> None:
    shutil.copy(CASE, folder / name)
    assert main(["mount", "--plain", "--", name]) == 0
    assert main(["sheet", f"-o{name}.svg", "--", name]) == 0
    assert capsys.readouterr().out.startswith("GO")
    assert sorted(os.listdir(folder)) == sorted([name, f"{name}.svg"])


@pytest.mark.usefixtures("folder")
@pytest.mark.parametrize("name", ODD_NAMES)
def test_a_name_that_is_not_there_is_told_plainly(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["mount", "--", name]) == 2
    accepted = "accepted: a case file that ends in .yaml, .toml or .json"
    assert capsys.readouterr().err == f"{name}: there is no such file; {accepted}\n"


def test_letters_that_the_locale_does_not_know_are_told_plainly(tmp_path: Path) -> None:
    ran = shell(f"{ADVISOR} mount 'gr\u00fcn.yaml'", tmp_path, LC_ALL="C", PYTHONUTF8="0", PYTHONCOERCECLOCALE="0")
    assert ran.returncode == 2
    assert "n.yaml: there is no such file" in ran.stderr


@pytest.mark.parametrize(
    "name", [r"C:\sheets\out.doc", "C:\\sheets\\", "sheet", "nowhere/sheet.svg", "/proc/sheet.svg"]
)
def test_a_file_that_cannot_be_written_is_told_plainly(
    folder: Path, name: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["sheet", CASE, "-o", name]) == 2
    assert capsys.readouterr().err.startswith(f"-o {name}: ")
    assert os.listdir(folder) == []


@pytest.mark.slow
def test_line_ends_and_mark_of_another_system_change_nothing(tmp_path: Path) -> None:
    text = Path(CASE).read_text(encoding="utf-8")
    case = tmp_path / "case.yaml"
    case.write_bytes(("\ufeff" + text.replace("\n", "\r\n")).encode())
    told = shell(f"{ADVISOR} mount {case} && {ADVISOR} mount - <{case}")
    assert told.returncode == 0, told.stderr
    assert told.stdout == 2 * shell(f"{ADVISOR} mount {CASE}").stdout


def test_nothing_in_the_environment_is_needed(tmp_path: Path) -> None:
    ran = shell(f"env -i PYTHONPATH='{ROOT}' {ADVISOR} advise '{CASE}'", tmp_path)
    assert ran.returncode == 0, ran.stderr
    assert "rpm" in ran.stdout
    assert os.listdir(tmp_path) == []


@pytest.mark.slow
def test_a_place_that_takes_no_file_is_enough(tmp_path: Path) -> None:
    """Neither the home nor the folder of the program takes a file: `__pycache__` is one already, for root as well."""
    copy_to(tmp_path)
    for folder in [tmp_path, *(path for path in tmp_path.rglob("*") if path.is_dir())]:
        (folder / "__pycache__").write_text("")
    before = sorted(tmp_path.rglob("*"))
    place = {"PYTHONPATH": str(tmp_path), "HOME": "/proc", "XDG_STATE_HOME": "/proc", "PYTHONDONTWRITEBYTECODE": ""}
    ran = shell(f"{ADVISOR} advise '{CASE}' && {ADVISOR} explain maple", tmp_path, **place)
    assert ran.returncode == 0, ran.stderr
    assert ran.stderr == ""
    assert sorted(tmp_path.rglob("*")) == before


@pytest.mark.slow
@pytest.mark.parametrize("words", [f"sheet {CASE} -o x.pdf", f"plan {ROOT}/cases/green-ash-bowl-plan.yaml"])
def test_no_network_is_needed(tmp_path: Path, words: str) -> None:
    (tmp_path / "sitecustomize.py").write_text(REFUSE_NETWORK)
    path = os.pathsep.join([str(tmp_path), str(ROOT)])
    ran = shell(f"{ADVISOR} {words}", tmp_path, PYTHONPATH=path)
    assert ran.returncode == 0, ran.stderr
    seen = shell(f"'{sys.executable}' -S -c 'import sitecustomize, socket; socket.socket()'", tmp_path, PYTHONPATH=path)
    assert "this machine has no network" in seen.stderr  # the refusal works
