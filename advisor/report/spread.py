"""How far the limits range, as a person reads it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from advisor.report.numbers import limit_down
from advisor.report.terminal import Line, wrapped

STANDS_STILL = 1.001  # ends within a thousandth of each other are one number
WITHIN = 1.005  # the draws are no finer
ROWS = 8


def _movers(row: Mapping[str, Any]) -> str:
    return ", ".join(f"{entry['name']} {100 * entry['share']:.0f} %" for entry in row["inputs"][:2])


def _still(row: Mapping[str, Any]) -> bool:
    return bool(row["p95_rpm"] <= STANDS_STILL * row["p5_rpm"])


def spread_lines(spread: Mapping[str, Any]) -> Iterator[Line]:
    """One line a limit: what the answer takes, the range of 90 draws in 100, what moves it."""
    rows = spread["limits"][:ROWS]
    moving = [row for row in rows if not _still(row)]
    yield Line("")
    yield Line(f"How far the limits range, rpm ({spread['samples']} draws, seed {spread['seed']})", "title")
    if moving:
        yield Line("                   answer   5 in 100    middle  95 in 100   moved most by", "quiet")
    for row in moving:
        ends = (f"{limit_down(row[key]):>9}" for key in ("answer_rpm", "p5_rpm", "p50_rpm", "p95_rpm"))
        yield Line(f"  {row['name']:<14}{'  '.join(ends)}   {_movers(row)}", "first" if row is rows[0] else "text")
    still = [row["name"] for row in rows if _still(row)]
    if still:
        yield from wrapped(f"No scatter moves {', '.join(still)}.", "  ", "quiet")
    if spread["not_drawn"]:
        why = "its safety factors stand for the scatter"
        yield from wrapped(f"Not drawn: {', '.join(spread['not_drawn'])}; {why}.", "  ", "quiet")
    above = ", ".join(row["name"] for row in moving if row["answer_rpm"] > WITHIN * row["p5_rpm"])
    told = "In 5 draws of 100 the limit lies below the first number of the range; the answer takes no more than that"
    told += f", but a little more for {above}. " if above else ". "
    if any(row["name"] == "hold" for row in moving):
        told += "The hold is drawn without its divisor, which stands for its scatter; the others keep theirs. "
    yield from wrapped(told + "A percentage is an input's part of what moves the limit.", "  ", "quiet")
