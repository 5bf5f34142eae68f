"""Manners that a machine can check: sizes, words, names, mirrors."""

from __future__ import annotations

import ast
import doctest
import importlib
import re
from pathlib import Path

import pytest

from tests.house.tree import ROOT, files, python_files

LONGEST_FILE = 400
LONGEST_FUNCTION = 45
TOP = {
    "README.md", "DEVELOPERS.md", "pyproject.toml", ".gitignore", ".ci", "advisor", "rules", "tests", "cases", "docs",
}  # fmt: skip
# Put together here, so that this file does not hold them itself.
FORBIDDEN = [
    "tran" + "script", "seed " + "document", "seed_" + "document", "/work" + "/", "/tmp" + "/", "/root" + "/",
    "../" + "shared", "TO" + "DO", "FIX" + "ME", "XX" + "X",
]  # fmt: skip


def read(path: Path) -> str:
    return (ROOT / path).read_text(encoding="utf-8", errors="replace")


def test_the_top_level_holds_what_a_reader_looks_for() -> None:
    assert {path.parts[0] for path in files()} <= TOP


def test_no_file_is_too_long() -> None:
    lengths = {path: len(read(path).splitlines()) for path in python_files("advisor", "rules", "tests")}
    assert {str(path): length for path, length in lengths.items() if length > LONGEST_FILE} == {}


def functions(path: Path) -> list[tuple[str, int]]:
    """Every function of a file with its length in lines, decorators and docstring left out."""
    found = []
    for node in ast.walk(ast.parse(read(path))):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            start = node.body[0] if ast.get_docstring(node) is None or len(node.body) == 1 else node.body[1]
            head = node.body[0].lineno - node.lineno
            found.append((node.name, head + (node.end_lineno or 0) - start.lineno + 1))
    return found


def test_no_function_is_longer_than_a_screen() -> None:
    paths = python_files("advisor", "rules")
    long = {f"{path}: {name}": lines for path in paths for name, lines in functions(path) if lines > LONGEST_FUNCTION}
    assert long == {}


@pytest.mark.parametrize("word", FORBIDDEN)
def test_no_file_says_what_does_not_belong_here(word: str) -> None:
    texts = [path for path in files() if path.suffix != ".png" and not (ROOT / path).is_symlink()]
    assert len(texts) > 50
    assert [str(path) for path in texts if word in read(path)] == []


def test_every_ignored_warning_gives_its_reason_on_the_same_line() -> None:
    ignoring = re.compile(r"#\s*(?:noqa|type:\s*ignore|pragma)(?P<rest>.*)")
    reason = re.compile(r"(?:--|#)\s*\w")
    without = [
        f"{path}:{number}"
        for path in python_files("advisor", "rules", "tests")
        for number, line in enumerate(read(path).splitlines(), 1)
        if (found := ignoring.search(line)) and not reason.search(found["rest"])
    ]
    assert without == []


def test_every_rule_has_its_test_at_the_same_path() -> None:
    rules = [path for path in python_files("rules") if path.name != "__init__.py"]
    tests = set(python_files("tests"))
    missing = [str(path) for path in rules if Path("tests") / path.parent / f"test_{path.name}" not in tests]
    assert missing == []


def test_every_test_of_a_rule_has_its_rule() -> None:
    tests = [path for path in python_files("tests") if path.parts[1] == "rules" and len(path.parts) == 4]
    rules = set(python_files("rules"))
    named = [path for path in tests if path.name.startswith("test_")]
    orphans = [str(path) for path in named if path.relative_to("tests").parent / path.name[5:] not in rules]
    assert orphans == []


@pytest.mark.parametrize("top", ["advisor", "rules", "tests"])
def test_every_folder_of_python_files_is_a_package(top: str) -> None:
    folders = {path.parent for path in python_files(top)}
    assert [str(folder) for folder in folders if not (ROOT / folder / "__init__.py").is_file()] == []


def test_no_test_is_skipped_or_expected_to_fail() -> None:
    marks = ("mark.sk" + "ip", "mark.xf" + "ail", "pytest.sk" + "ip", "pytest.xf" + "ail", "import" + "orskip")
    found = [str(path) for path in python_files("tests") if any(mark in read(path) for mark in marks)]
    assert found == []


def docstrings(path: Path) -> list[tuple[str, str]]:
    """Name and docstring of everything in a file that has one, decorated or not."""
    tree = ast.parse(read(path))
    kinds = (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef)
    nodes = [node for node in ast.walk(tree) if isinstance(node, kinds)]
    return [(getattr(node, "name", path.stem), ast.get_docstring(node) or "") for node in nodes]


@pytest.mark.parametrize("path", [path for path in python_files("advisor") if ">>> " in read(path)], ids=str)
def test_examples_in_docstrings_come_out_as_printed(path: Path) -> None:
    module = importlib.import_module(".".join(path.with_suffix("").parts))
    runner = doctest.DocTestRunner()
    for name, text in docstrings(path):
        example = doctest.DocTestParser().get_doctest(text, dict(vars(module)), name, str(path), 0)
        runner.run(example)
    assert runner.summarize(verbose=False).attempted > 0
    assert runner.summarize(verbose=False).failed == 0
