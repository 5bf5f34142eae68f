"""Plants faults one by one in a copy of the program and says which of them no test of the quick suite notices.

    .venv/bin/python .ci/plant.py COUNT

A fault is one changed operator, comparison, number, truth value or bound. ADVISOR_SEED chooses which COUNT of all the
possible ones. The tests that mirror the file run first, then the whole quick suite. Fewer than four in five noticed:
exit code 1.
"""

from __future__ import annotations

import ast
import os
import random
import signal
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import NamedTuple, TypeVar

ROOT = Path(__file__).resolve().parent.parent
SWAPS = {
    ast.Add: ("+", "-"),
    ast.Sub: ("-", "+"),
    ast.Mult: ("*", "/"),
    ast.Div: ("/", "*"),
    ast.Pow: ("**", "*"),
    ast.Lt: ("<", ">="),
    ast.LtE: ("<=", ">"),
    ast.Gt: (">", "<="),
    ast.GtE: (">=", "<"),
    ast.Eq: ("==", "!="),
    ast.NotEq: ("!=", "=="),
    ast.And: ("and", "or"),
    ast.Or: ("or", "and"),
}
NAMES = {
    "min": "max",
    "max": "min",
    "below": "above",
    "above": "below",
    "at_most": "at_least",
    "at_least": "at_most",
    "present": "absent",
    "absent": "present",
}
LEAST_SHARE = 0.8
One = TypeVar("One")
Place = Callable[[int, int], int]  # byte of a line and column


class Fault(NamedTuple):
    path: Path
    start: int
    end: int
    new: str


def main() -> int:
    faults = chosen([fault for path in program_files() for fault in possible_faults(path)], int(sys.argv[1]))
    with tempfile.TemporaryDirectory() as folder:
        copy_tracked_files(Path(folder))
        if fails("tests", Path(folder)):
            print("the quick suite fails before anything is planted")
            return 1
        missed = [fault for fault in faults if not noticed(fault, Path(folder))]
    print(f"{len(faults) - len(missed)} of {len(faults)} planted faults were noticed")
    return int(len(faults) - len(missed) < LEAST_SHARE * len(faults))


def chosen(possible: Sequence[One], count: int | None) -> list[One]:
    """So many of them by the seed, in their order; all of them without a count. Says what was chosen."""
    seed = os.environ.get("ADVISOR_SEED", "1")
    count = len(possible) if count is None else min(count, len(possible))
    places = random.Random(int(seed)).sample(range(len(possible)), count)
    print(f"{count} of {len(possible)}, ADVISOR_SEED={seed}", flush=True)
    return [possible[place] for place in sorted(places)]


def tracked(*folders: str) -> list[Path]:
    listed = subprocess.run(
        ["git", "ls-files", "--cached", *folders], cwd=ROOT, check=True, capture_output=True, text=True
    )
    return [Path(line) for line in listed.stdout.splitlines()]


def program_files() -> list[Path]:
    return [path for path in tracked("advisor", "rules") if path.suffix == ".py" and path.name != "__init__.py"]


def copy_tracked_files(target: Path) -> None:
    archive = subprocess.run(["tar", "cf", "-", *map(str, tracked())], cwd=ROOT, check=True, capture_output=True)
    subprocess.run(["tar", "xf", "-", "-C", str(target)], input=archive.stdout, check=True)


def possible_faults(path: Path) -> Iterator[Fault]:
    source = (ROOT / path).read_text(encoding="utf-8")
    starts = [0]
    for line in source.splitlines(keepends=True):
        starts.append(starts[-1] + len(line.encode()))
    raw = source.encode()

    def place(line: int, column: int) -> int:
        return starts[line - 1] + column

    for node in ast.walk(ast.parse(source)):
        for start, end, old, new in changes(node, place):
            at = raw.find(old.encode(), start, end)
            if at >= 0:
                yield Fault(path, at, at + len(old.encode()), new)


def changes(node: ast.AST, place: Place) -> Iterator[tuple[int, int, str, str]]:
    if isinstance(node, ast.BinOp) and type(node.op) in SWAPS:
        yield (*between(node.left, node.right, place), *SWAPS[type(node.op)])
    elif isinstance(node, ast.BoolOp):
        yield (*between(node.values[0], node.values[1], place), *SWAPS[type(node.op)])
    elif isinstance(node, ast.Compare) and type(node.ops[0]) in SWAPS:
        yield (*between(node.left, node.comparators[0], place), *SWAPS[type(node.ops[0])])
    elif isinstance(node, ast.Name) and node.id in NAMES:
        yield (*span(node, place), node.id, NAMES[node.id])
    elif isinstance(node, ast.Constant) and isinstance(node.value, bool):
        yield (*span(node, place), str(node.value), str(not node.value))
    elif isinstance(node, ast.Constant) and isinstance(node.value, int | float):
        start, end = span(node, place)
        yield start, end, ast.unparse(node), repr(node.value * 2 + 1)


def span(node: ast.expr, place: Place) -> tuple[int, int]:
    return place(node.lineno, node.col_offset), place(node.end_lineno or 0, node.end_col_offset or 0)


def between(left: ast.expr, right: ast.expr, place: Place) -> tuple[int, int]:
    return span(left, place)[1], span(right, place)[0]


def noticed(fault: Fault, copy: Path) -> bool:
    """Whether a test fails, or never ends, with the fault in place."""
    target = copy / fault.path
    sound = target.read_bytes()
    target.write_bytes(sound[: fault.start] + fault.new.encode() + sound[fault.end :])
    try:
        found = any(fails(tests, copy) for tests in (mirror(fault.path, copy), "tests") if tests)
    finally:
        target.write_bytes(sound)
    if not found:
        line = sound[: fault.start].count(b"\n") + 1
        old = sound[fault.start : fault.end].decode()
        print(f"not noticed: {fault.path}:{line}: {old} -> {fault.new}", flush=True)
    return found


def mirror(path: Path, copy: Path) -> str:
    """The tests that mirror a file: those of the same name, else the folder of its room, else none."""
    inside = path.relative_to("advisor") if path.parts[0] == "advisor" else path
    for candidate in (inside.parent / f"test_{inside.name}", inside.parent):
        if candidate != Path() and (copy / "tests" / candidate).exists():
            return str(Path("tests") / candidate)
    return ""


def fails(tests: str, copy: Path, workers: int = 2) -> bool:
    command = [str(ROOT / ".venv/bin/python"), "-m", "pytest", "-x", "-q", "-m", "not slow", "-n", str(workers)]
    command += ["-p", "no:cacheprovider", "--ignore=tests/house", tests]
    places = {"PYTHONPATH": str(copy), "PYTHONDONTWRITEBYTECODE": "1"}  # stale byte code would hide a fault
    running = subprocess.Popen(
        command, cwd=copy, env={**os.environ, **places}, stdout=subprocess.DEVNULL, start_new_session=True
    )
    try:
        return running.wait(timeout=600) not in (0, 5)  # 5: nothing to run
    except subprocess.TimeoutExpired:
        os.killpg(running.pid, signal.SIGKILL)  # its workers too
        return True


if __name__ == "__main__":
    sys.exit(main())
