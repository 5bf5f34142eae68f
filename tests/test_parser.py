"""The words of a command: what is taken, how wide help is, and where a wrong word is told."""

from __future__ import annotations

import pytest

from advisor.cli import ANSWER_PARTS
from advisor.models.parts import WHOLE
from advisor.parser import COMMANDS, build, parse


@pytest.mark.parametrize(("columns", "widest"), [("60", 60), ("nonsense", 80), ("0", 80), ("", 80)])
def test_help_is_as_wide_as_the_terminal(
    columns: str, widest: int, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("COLUMNS", columns)
    with pytest.raises(SystemExit) as ended:
        parse(["speed", "--help"])
    assert ended.value.code == 0
    assert widest - 12 <= max(len(line) for line in capfd.readouterr().out.splitlines()) <= widest


@pytest.mark.parametrize("name", COMMANDS)
def test_a_command_alone_takes_what_it_takes_among_all(name: str) -> None:
    words = [name, "--plain", "--units", "inch"] if "units" in COMMANDS[name].options else [name]
    assert parse(words) == build().parse_args(words)


def test_no_command_is_no_fault() -> None:
    assert parse([]).command is None


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["speed", "--colour"], "advisor speed: unrecognized arguments: --colour\ntry: advisor speed --help\n"),
        (["spede"], "try: advisor --help\n"),
    ],
)
def test_a_wrong_word_is_told_where_help_for_it_is(
    words: list[str], told: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as ended:
        parse(words)
    assert ended.value.code == 2
    assert capsys.readouterr().err.endswith(told)


def test_behind_two_dashes_everything_is_a_word() -> None:
    assert parse(["mount", "--plain", "--", "-a.yaml", "--json"]).words == ["-a.yaml", "--json"]


def test_the_whole_answer_is_whole() -> None:
    """The command line has its own copy, which imports nothing."""
    assert ANSWER_PARTS["advise"] == WHOLE
