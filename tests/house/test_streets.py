"""The one-way street: who may import whom."""

from __future__ import annotations

import ast
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

from tests.house.tree import ROOT, copy_to, python_files

DECLARED = {
    "durable", "jinja2", "rich", "starlette", "tomli", "typst", "uvicorn", "yaml",
}  # fmt: skip
NEWER_STANDARD = {"tomllib"}  # Python 3.10 takes tomli instead


@cache
def imported(path: Path) -> set[str]:
    """Names of the modules that a file imports, wherever in it."""
    names: set[str] = set()
    for node in ast.walk(ast.parse((ROOT / path).read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            names.add("." * node.level + (node.module or ""))
    return names


def contract(folder: Path) -> subprocess.CompletedProcess[str]:
    command = [str(Path(sys.executable).with_name("lint-imports")), "--no-cache"]
    environment = {"PYTHONPATH": str(folder), "PATH": "/usr/bin:/bin"}
    return subprocess.run(command, cwd=folder, env=environment, check=False, capture_output=True, text=True)


def test_every_door_is_allowed_and_every_module_has_its_place() -> None:
    ran = contract(ROOT)
    assert ran.returncode == 0, ran.stdout
    assert "2 kept, 0 broken" in ran.stdout


@pytest.mark.slow
@pytest.mark.parametrize(
    ("file", "text"),
    [
        ("advisor/physics/backward.py", "from advisor import advice\n"),
        ("advisor/nowhere.py", ""),
        ("advisor/reckoning/backward.py", "def late() -> None:\n    import advisor.engine\n"),
        ("rules/thrust/looks_up.py", "from advisor.models import wood\n"),
    ],
)
def test_a_wrong_door_is_seen(tmp_path: Path, file: str, text: str) -> None:
    copy_to(tmp_path)
    (tmp_path / file).write_text(text, encoding="utf-8")
    assert contract(tmp_path).returncode == 1


def test_rules_import_the_rulebook_and_nothing_else() -> None:
    rules = python_files("rules")
    assert len(rules) > 100
    assert {str(path): found for path in rules if (found := imported(path) - {"advisor.rulebook"})} == {}


def test_one_module_alone_knows_the_rules_engine() -> None:
    knowing = {str(path) for path in python_files("advisor", "rules") if _names_engine(imported(path))}
    assert knowing == {"advisor/engine.py"}


def _names_engine(names: set[str]) -> bool:
    return any(name.split(".")[0] == "durable" for name in names)


def test_rules_and_cases_go_by_one_name() -> None:
    wrong = {
        str(path): names
        for path in python_files("advisor", "rules", "tests", "cases")
        if (names := {name for name in imported(path) if name.split(".")[0] in ("rules", "cases")})
    }
    assert wrong == {}


def test_the_product_needs_nothing_that_only_tests_install() -> None:
    product = {name.split(".")[0] for path in python_files("advisor", "rules") for name in imported(path)}
    outside = product - set(sys.stdlib_module_names) - NEWER_STANDARD - {"advisor"}
    assert outside <= DECLARED, outside
