"""A command imports what it needs and nothing else: what it imports beyond that, everybody waits for."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.house.tree import ROOT

LOOK = """
import sys
before = set(sys.modules)
from advisor.cli import main
sys.stdout = sys.stderr
main(sys.argv[1:])
print(*sorted(set(sys.modules) - before), file=sys.__stdout__)
"""
ENGINE = {"durable", "durable_rules_engine"}
ANSWER = {"advice", "cli", "data", "engine", "facts", "figure", "kept", "models", "parser", "physics", "quantity"}
ANSWER |= {"center_facts", "material_facts", "reading", "reckoning", "report", "rulebook", "rules"}
ANSWER |= {"situation", "sources", "units", "verdicts"}
# command -> rooms of the advisor, libraries
NEEDS = {
    "advise cases/maple-spindle.yaml": (ANSWER, ENGINE | {"yaml"}),
    "thrust cases/pine-tool-handle.json": (ANSWER, ENGINE),
    "mount work.material=ash work.diameter=2in work.length=6in": (ANSWER, ENGINE),
    "speed cases/platter-in-recess.toml": (ANSWER, ENGINE | {"tomli"}),
    "reckon rim-speed diameter=10in rpm=900": (
        {"cli", "data", "figure", "kept", "parser", "physics", "quantity", "report", "sources", "units"},
        set(),
    ),
    "center diameter=1in hole=0.251in cutter=1/2in depth=0.200in land=0.005in": (
        {"center_command", "centers", "cli", "data", "drawing", "figure", "kept", "parser", "physics", "quantity"}
        | {"sources", "units"},
        set(),
    ),
    "--version": ({"cli", "parser"}, set()),
}
OWN = set(sys.stdlib_module_names)


@pytest.mark.parametrize("command", NEEDS)
def test_a_command_imports_only_what_it_needs(command: str) -> None:
    rooms, libraries = NEEDS[command]
    child = subprocess.run(
        [sys.executable, "-c", LOOK, *command.split()], cwd=ROOT, capture_output=True, text=True, check=True
    )
    loaded = set(child.stdout.split())
    inside = {name.split(".")[1] for name in loaded if name.startswith("advisor.")}
    outside = {name.partition(".")[0] for name in loaded if "cython" not in name} - OWN - {"advisor"}  # part of yaml
    assert inside <= rooms
    assert outside <= libraries


def test_a_change_of_this_list_is_noticed() -> None:
    """The rooms named here exist, so that a misspelled one cannot hide anything."""
    there = {path.stem for path in Path(ROOT / "advisor").iterdir()}
    assert all(rooms <= there for rooms, _ in NEEDS.values())
