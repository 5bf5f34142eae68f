"""`advisor compare`: two cases, or one case and what words change in it."""

from __future__ import annotations

import io
import json
import sys
from collections.abc import Sequence
from typing import TextIO

from advisor.models.case import Case
from advisor.reading import read_case
from advisor.reading.files import LARGEST
from advisor.reading.problems import Place, fault

WANTED = "two case files, or one and the field=value words that change it"


def _stdin(wanted: bool) -> TextIO:
    """Standard input, read once, to be read twice."""
    raw = sys.stdin.buffer.read(LARGEST + 1) if wanted else b""
    return io.TextIOWrapper(io.BytesIO(raw), encoding="utf-8")


def two_cases(words: Sequence[str]) -> tuple[tuple[str, str], tuple[Case, Case]]:
    """Both cases and their names. Words change one case, or both where two are named. Raises InputFault."""
    files = [word for word in words if "=" not in word]
    changes = [word for word in words if "=" in word]
    if len(files) not in (1, 2) or (len(files) == 1 and not changes):
        given = "nothing" if not words else "three files or more" if len(files) > 2 else "one side"
        raise fault(Place("compare"), f"{given} was named", WANTED)
    if files == ["-", "-"]:
        raise fault(Place("standard input"), "cannot be both sides", WANTED)
    stdin = _stdin("-" in files)
    one = read_case(files[0], changes if len(files) == 2 else (), stdin)
    if files[0] == "-":
        stdin.seek(0)
    other = read_case(files[-1], changes, stdin)
    name = files[1] if len(files) == 2 else "changed"
    return (files[0], name), (one, other)


def run(words: Sequence[str], *, as_json: bool, plain: bool, units: str | None, out: TextIO) -> int:
    """Compare and print. Raises InputFault."""
    names, (one, other) = two_cases(words)
    from advisor.advice.compare import compare
    from advisor.report.comparison import comparison_document, comparison_lines
    from advisor.report.screen import write

    found = compare(one, other)
    if as_json:
        out.write(json.dumps(comparison_document(found, names), allow_nan=False, indent=2) + "\n")
        return 0
    write(comparison_lines(found, names, units or one.units or "metric"), out, plain=plain)
    return 0
