"""Which test checks which source, as the validation files declare it; `python -m tests.house.checked` writes it."""

from __future__ import annotations

import ast
from pathlib import Path

from advisor.data.tables import FOLDER
from tests.house.tree import ROOT

VALIDATION = ROOT / "tests" / "validation"
TABLE = FOLDER / "source_checks.csv"


def declared(path: Path) -> tuple[str, ...]:
    """What a validation file names in SOURCES; empty where it does not."""
    for node in ast.parse(path.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "SOURCES":
            return tuple(ast.literal_eval(node.value))
    return ()


def files() -> list[Path]:
    """Every file of checks against the outside."""
    return sorted(VALIDATION.glob("test_*.py"))


def table() -> str:
    """The table of sources and tests as text."""
    rows = [(key, f"tests/validation/{path.name}") for path in files() for key in declared(path)]
    return "source,test\n" + "".join(f"{key},{name}\n" for key, name in sorted(rows))


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
