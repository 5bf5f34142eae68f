"""docs/ says what the program says, and every example in it and in `--help` does what it shows."""

from __future__ import annotations

import os
import shlex
import signal
import socket
import subprocess
import sys
from pathlib import Path

import pexpect
import pytest

from advisor.cli import RUN
from advisor.parser import COMMANDS, build
from tests.house.docs import PAGES, SECTIONS, examples, names, refreshed
from tests.house.tree import ROOT

TEXTS = {name: path.read_text(encoding="utf-8") for name, path in PAGES.items()}
EXAMPLES = list(
    dict.fromkeys(
        [
            *(command.example for command in COMMANDS.values()),
            *(line for text in TEXTS.values() for line in examples(text)),
        ]
    )
)
STAYS_OPEN = ("advisor ask", "advisor serve")


@pytest.mark.parametrize("name", TEXTS)
def test_the_parts_made_from_the_program_are_fresh(name: str) -> None:
    assert refreshed(TEXTS[name]) == TEXTS[name], "python -m tests.house.docs writes them anew"


def test_every_command_and_every_section_of_a_case_is_described() -> None:
    assert sorted(names(TEXTS["commands.md"])) == sorted(f"command {name}" for name in COMMANDS)
    assert names(TEXTS["case-file.md"]) == [f"section {name}" for name in SECTIONS]
    for name in COMMANDS:
        part = TEXTS["commands.md"].partition(f"## advisor {name}\n")[2].partition("\n## ")[0]
        assert examples(part), name
        assert all(line.startswith(f"advisor {name}") for line in examples(part))


def test_every_command_is_run_by_something() -> None:
    assert list(COMMANDS) == [name for name in COMMANDS if name in RUN]
    assert len(RUN) == len(COMMANDS)


@pytest.mark.parametrize("name", COMMANDS)
def test_help_ends_with_an_example_of_that_command(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as done:
        build().parse_args([name, "--help"])
    assert done.value.code == 0
    shown = " ".join(capsys.readouterr().out.split())
    assert shown.endswith(f"example: {' '.join(COMMANDS[name].example.split())}")


@pytest.mark.parametrize("line", EXAMPLES)
def test_every_example_is_understood(line: str) -> None:
    words = shlex.split(line)
    assert words[0] == "advisor"
    assert build().parse_args(words[1:]).command == words[1]


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """A folder as a reader would have it: the cases, and the command on the path."""
    (tmp_path / "cases").symlink_to(ROOT / "cases")
    command = tmp_path / "bin" / "advisor"
    command.parent.mkdir()
    command.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m advisor.cli "$@"\n', encoding="utf-8")
    command.chmod(0o755)
    return tmp_path


def environment(shop: Path) -> dict[str, str]:
    path = f"{shop / 'bin'}{os.pathsep}{os.environ['PATH']}"
    return {**os.environ, "PATH": path, "PYTHONPATH": str(ROOT), "XDG_STATE_HOME": str(shop / "state"), "TERM": "dumb"}


@pytest.mark.slow
@pytest.mark.cases
@pytest.mark.parametrize("line", [line for line in EXAMPLES if not line.startswith(STAYS_OPEN)])
def test_every_example_gives_an_answer(line: str, shop: Path) -> None:
    done = subprocess.run(
        ["bash", "-c", line], cwd=shop, env=environment(shop), capture_output=True, text=True, check=False, timeout=300
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip() or "-o" in line
    assert done.stderr == ""
    if " -o " in line:
        assert (shop / line.split(" -o ")[1].split()[0]).stat().st_size > 500


@pytest.mark.slow
@pytest.mark.cases
@pytest.mark.parametrize("line", [line for line in EXAMPLES if line.startswith(STAYS_OPEN)])
def test_every_example_that_stays_open_opens(line: str, shop: Path) -> None:
    port = free_port()  # the one that is printed may be somebody else's at the moment
    child = pexpect.spawn(
        "bash", ["-c", f"exec {line.replace('8321', port)}"], cwd=str(shop), env=environment(shop), encoding="utf-8",
        timeout=120,
    )  # fmt: skip
    child.expect("How large is it" if "ask" in line else f"127.0.0.1:{port}")
    for _ in range(20):  # one that comes just before Python waits for a key is noticed with the next key only
        child.kill(signal.SIGINT)
        if child.expect([pexpect.EOF, pexpect.TIMEOUT], timeout=6) == 0:
            break
    else:
        pytest.fail("Ctrl-C does not end it")
    child.close()
    assert "Traceback" not in child.before


def free_port() -> str:
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return str(found.getsockname()[1])
