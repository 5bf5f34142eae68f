"""Limits on speed as bars on one logarithmic axis, the governing one dark."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any

from advisor.drawing.shapes import Fill, Line, Text, View
from advisor.drawing.svg import Placed, write_svg

WIDTH = 230.0
LEFT, RIGHT = 42.0, 172.0  # of the axis; names stand before it, numbers after the bars
TOP, ROW, THICK, FOOT = 22.0, 8.0, 4.6, 16.0
TICKS = (10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000, 20000, 50000, 100000)
NEAREST_TICKS = 1.05  # the first and last tick lie at least so far beyond what is drawn


def _down(rpm: float) -> str:
    """Two figures, never above the limit."""
    step = 10.0 ** max(math.floor(math.log10(max(rpm, 1.0))) - 1, 0)
    return f"{math.floor(rpm / step + 1e-9) * step:.0f}"


def _axis(values: Sequence[float]) -> tuple[int, int]:
    """Ticks at both ends of the axis."""
    low = max((tick for tick in TICKS if tick * NEAREST_TICKS <= min(values)), default=TICKS[0])
    high = min((tick for tick in TICKS if tick >= max(values) * NEAREST_TICKS), default=TICKS[-1])
    return low, high


def limits_chart(limits: Sequence[Mapping[str, Any]], title: str, start: float | None = None) -> str:
    """SVG text of a chart of limits: rows with `name`, `rpm` and `grade`; `start` is marked by a dashed line.

    Bars and axis in rpm, logarithmic; numbers are rounded down. Raises ValueError without any limit.
    """
    if not limits:
        raise ValueError("a chart needs one limit at least")
    rows = sorted(limits, key=lambda limit: float(limit["rpm"]))
    marks = [float(limit["rpm"]) for limit in rows] + ([start] if start else [])
    low, high = _axis(marks)
    span = math.log10(high / low)

    def at(rpm: float) -> float:
        return LEFT + (RIGHT - LEFT) * min(max(math.log10(max(rpm, 1e-9) / low) / span, 0.0), 1.0)

    bottom = TOP + ROW * len(rows)
    view = View("limits on the spindle speed, rpm", 1.0)
    for tick in TICKS:
        if low <= tick <= high:
            view.add(Line((at(tick), -TOP), (at(tick), -bottom), "thin"))
            view.add(Text((at(tick), -bottom - 5), str(tick)))
    for place, row in enumerate(rows):
        _bar(view, row, TOP + ROW * place, at(float(row["rpm"])), place == 0)
    if start:
        view.add(Line((at(start), -TOP + 2), (at(start), -bottom), "hidden"))
        view.add(Text((at(start), -TOP + 3), f"start {_down(start)}"))
    notes = [Text((LEFT, 10.0), title, "start", True), Text((LEFT, bottom + 11), "rpm, logarithmic", "start")]
    return write_svg(title, [Placed(view, (0.0, 0.0))], notes, WIDTH, bottom + FOOT)


def _bar(view: View, row: Mapping[str, Any], top: float, end: float, governs: bool) -> None:
    upper, lower = -(top + (ROW - THICK) / 2), -(top + (ROW + THICK) / 2)
    reach = max(end, LEFT + 1.0)
    corners = ((LEFT, upper), (reach, upper), (reach, lower), (LEFT, lower))
    view.add(Fill(corners, "land" if governs else "steel"))
    level = -(top + ROW / 2) - 1.1
    decides = ", decides" if governs else ""
    view.add(Text((LEFT - 2, level), str(row["name"]), "end", governs))
    view.add(Text((reach + 2, level), f"{_down(float(row['rpm']))}{decides} ({row['grade']})", "start", governs))
