"""Completion in bash: the shell itself is asked what it would offer."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

import pexpect
import pytest

from advisor.cli import main
from advisor.completion import bash
from advisor.parser import COMMANDS
from tests.test_commands import ROOT

BREAKS = "$' \\t\\n\"\\'><=;|&(:'"
ASK = """
COMP_LINE=$1 COMP_POINT=${#1}
_advisor
printf '%s\\n' "${COMPREPLY[@]}"
"""


@pytest.fixture(scope="module")
def script(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The script in a file, as a person would keep it."""
    path = tmp_path_factory.mktemp("completion") / "advisor.bash"
    path.write_text(bash(), encoding="utf-8")
    return path


def offered(script: Path, line: str, breaks: str = BREAKS) -> list[str]:
    """What bash would offer at the end of a line; a space at the end of a word stands for itself."""
    shell = shutil.which("bash")
    assert shell is not None
    commands = f"source '{script}'; COMP_WORDBREAKS={breaks}{ASK}"
    done = subprocess.run(
        [shell, "--norc", "-eu", "-c", commands, "bash", line], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
    return [word for word in done.stdout.split("\n") if word]


def test_commands_are_offered(script: Path) -> None:
    assert offered(script, "advisor ") == [f"{name} " for name in COMMANDS]
    assert offered(script, "advisor ba") == ["batch "]


@pytest.mark.parametrize(
    ("line", "wanted"),
    [
        ("advisor batch --jo", ["--jobs "]),
        ("advisor batch ca", ["cases/"]),
        ("advisor advise cases/maple-s", ["cases/maple-spindle.yaml "]),
        ("advisor advise cases/__in", []),
        ("advisor hold work.mar", ["work.marks_allowed="]),
        ("advisor hold work.marks_allowed=h", ["holes "]),
        ("advisor ask hold.method=spur", ["spur-drive "]),
        ("advisor compare cases/maple-spindle.yaml machine.bolted_down=", ["yes ", "no "]),
        ("advisor reckon whirl", ["whirl-speed "]),
        ("advisor reckon whirl-speed len", ["length="]),
        ("advisor explain no-window-", ["no-window-even-light "]),
        ("advisor list sp", ["species "]),
        ("advisor schema a", ["answer "]),
        ("advisor speed --units m", ["metric "]),
        ("advisor center cut", ["cutter=", "cutters="]),
        ("advisor completion b", ["bash "]),
        ("advisor sheet cases/maple-spindle.yaml -o READ", ["README.md "]),
        ("advisor serve --p", ["--port "]),
        ("advisor nonsense x", []),
    ],
)
def test_words_files_and_options_are_offered(script: Path, line: str, wanted: list[str]) -> None:
    assert offered(script, line) == wanted


def test_a_shell_that_does_not_break_at_the_sign_gets_the_whole_word(script: Path) -> None:
    assert offered(script, "advisor hold work.marks_allowed=h", "' '") == ["work.marks_allowed=holes "]


def test_the_key_itself_completes(script: Path) -> None:
    child = pexpect.spawn("bash", ["--norc", "-i"], encoding="utf-8", timeout=60, cwd=str(ROOT), dimensions=(24, 200))
    child.sendline(f"PS1='ready> '; bind 'set bell-style none'; source '{script}'")
    child.expect("ready> ")
    child.send("advisor advise work.marks_a\t")
    child.expect("work.marks_allowed=")
    child.send("ho\t")
    child.expect("holes ")
    child.close(force=True)


def test_the_command_prints_the_script_and_names_the_shells(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["completion", "bash"]) == 0
    assert capsys.readouterr().out == bash()
    for words in ([], ["fish"], ["bash", "bash"]):
        assert main(["completion", *words]) == 2
        assert capsys.readouterr().err == "completion needs the name of a shell: bash\n"
