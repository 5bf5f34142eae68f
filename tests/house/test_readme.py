"""README.md and DEVELOPERS.md: what they tell a reader to type does what they say."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
from pathlib import Path

import pytest

from tests.house.tree import ROOT, copy_to

README = (ROOT / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
SET_UP_AND_ADVISE, SET_UP_AND_TEST, *QUESTIONS = [
    line for block in re.findall(r"```sh\n(.*?)```", README, re.DOTALL) for line in block.splitlines()
]
WALKS = {
    title: "".join(re.findall(r"```sh\n(.*?)```", text, re.DOTALL))
    for title, text in re.findall(r"^## (Add .*?)\n(.*?)(?=^## |\Z)", DEVELOPERS, re.DOTALL | re.MULTILINE)
}


def shell(commands: str, folder: Path) -> subprocess.CompletedProcess[str]:
    """Run commands as a reader would, against the program that stands in the folder."""
    environment = {**os.environ, "PYTHONPATH": str(folder), "PYTHONDONTWRITEBYTECODE": "1", "NO_COLOR": "1"}
    for name in [name for name in environment if name.startswith("PYTEST")]:
        del environment[name]
    return subprocess.run(
        ["sh", "-eu", "-c", commands], cwd=folder, env=environment, check=False, capture_output=True, text=True,
    )  # fmt: skip


def test_the_job_stands_first() -> None:
    first = README.split("\n\n")[0]
    assert all(word in first for word in ("advisor", "mounted", "holds", "fast", "tailstock"))


@pytest.mark.parametrize("command", [SET_UP_AND_ADVISE, SET_UP_AND_TEST])
def test_the_full_check_runs_the_command_as_printed(command: str) -> None:
    assert f"    {command}\n" in (ROOT / ".ci" / "run").read_text(encoding="utf-8")


def test_both_commands_set_up_first_and_nothing_stands_between() -> None:
    assert SET_UP_AND_ADVISE.startswith("sh .ci/set-up && ")
    assert SET_UP_AND_TEST.startswith("sh .ci/set-up test && ")


def test_the_first_command_prints_advice() -> None:
    ran = shell(SET_UP_AND_ADVISE.partition(" && ")[2], ROOT)
    assert ran.returncode == 0, ran.stderr
    assert "rpm" in ran.stdout
    assert ran.stderr == ""


@pytest.mark.parametrize("command", QUESTIONS)
def test_every_question_is_answered(command: str) -> None:
    ran = shell(command, ROOT)
    assert ran.returncode == 0, ran.stderr
    assert ran.stdout.strip()


def test_there_are_four_walks() -> None:
    assert list(WALKS) == ["Add a rule", "Add a figure", "Add a species", "Add a way of holding"]


@pytest.mark.slow
@pytest.mark.parametrize("title", WALKS)
def test_a_walk_leads_where_it_says(tmp_path: Path, title: str) -> None:
    copy_to(tmp_path)
    (tmp_path / ".venv").symlink_to(ROOT / ".venv")
    ran = shell(WALKS[title], tmp_path)
    assert ran.returncode == 0, ran.stdout + ran.stderr


def test_the_table_of_rooms_names_every_room_and_no_other() -> None:
    rows = re.findall(r"^\| (`.*?) \|", DEVELOPERS, re.MULTILINE)
    told = set(re.findall(r"`([^`]+)`", " ".join(rows)))
    top = {f"{name}/" for name in ("rules", "cases", "tests")}
    entries = [path for path in (ROOT / "advisor").iterdir() if path.name not in ("__init__.py", "rules", "cases")]
    rooms = {f"advisor/{path.name}" for path in entries if path.suffix == ".py" or (path / "__init__.py").is_file()}
    assert {name for name in told if name.startswith(("advisor/", *top))} == rooms | top


def test_the_parts_of_the_long_check_are_listed_for_a_wrong_name() -> None:
    assert shutil.which("bash")
    ran = shell(".ci/long nonsense", ROOT)
    assert ran.returncode == 2
    assert "fuzz" in ran.stderr
    assert "planted" in ran.stderr
