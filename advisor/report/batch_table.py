"""Many answers as one table: a row a file, the same content with color or without."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

from advisor.models.spoken import spoken
from advisor.report.numbers import force, limit_down
from advisor.report.terminal import Line
from advisor.verdicts import MOUNT

HEAD = ("case", "verdict", "held by", "start", "never above", "decided by", "thrust to set")
NUMBERS = (3, 4)
NO_ANSWER = "no answer"


def _cells(file: str, row: Mapping[str, Any] | None, units: str) -> tuple[str, ...]:
    name = "".join(sign if sign.isprintable() else "?" for sign in Path(file).name)
    if row is None:
        return (name, NO_ANSWER, "see the message", "", "", "", "")
    verdict = row["verdict"].replace("-", " ")
    if row["verdict"] == "do-not-mount":
        return (name, verdict, "", "", "", "", "")
    thrust = "" if row["window"] == "not-used" else "none is safe"
    if row["set"] is not None:
        thrust = force(row["set"], units, up=True)
    start = limit_down(row["start"]) if row["start"] else "none"
    return (name, verdict, spoken(row["hold"]), start, limit_down(row["ceiling"]), row["governed_by"], thrust)


def table(rows: Sequence[tuple[str, Mapping[str, Any] | None]], units: str) -> Iterator[Line]:
    """Lines of the table; (file, row of an answer or None) in the order given."""
    cells = [_cells(file, row, units) for file, row in rows]
    widths = [max(len(line[column]) for line in (HEAD, *cells)) for column in range(len(HEAD))]

    def laid(line: Sequence[str]) -> str:
        parts = (
            f"{text:>{width}}" if column in NUMBERS else f"{text:<{width}}"
            for column, (text, width) in enumerate(zip(line, widths, strict=True))
        )
        return "  ".join(parts).rstrip()

    yield Line(laid(HEAD), "title")
    for line, (_, row) in zip(cells, rows, strict=True):
        yield Line(laid(line), row["verdict"] if row is not None else "caution")


def summary(rows: Sequence[tuple[str, Mapping[str, Any] | None]]) -> str:
    """How many of each verdict, the worst first."""
    found = [row["verdict"] if row is not None else NO_ANSWER for _, row in rows]
    told = [f"{found.count(word)} {word.replace('-', ' ')}" for word in (NO_ANSWER, *reversed(MOUNT)) if word in found]
    return f"{len(rows)} case{'s' if len(rows) != 1 else ''}: {', '.join(told)}"
