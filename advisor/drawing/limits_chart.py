"""Limits on speed as bars on one logarithmic axis, the governing one dark."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from advisor.drawing.shapes import TEXT_HEIGHT, Fill, Line, Text, View, text_width
from advisor.drawing.svg import Picture, Placed


class Style(NamedTuple):
    """Page mm: names before the axis, numbers after the bars, room over and under, rows; whether grades are told."""

    width: float
    names: float
    numbers: float
    top: float
    row: float
    thick: float
    foot: float
    grades: bool


ALONE = Style(230.0, 42.0, 58.0, 22.0, 8.0, 4.6, 16.0, True)
IN_COLUMN = Style(118.0, 33.0, 28.0, 7.0, 4.8, 3.2, 6.5, False)  # to be shown at about four fifths
TICKS = (10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000, 20000, 50000, 100000)
NEAREST_TICKS = 1.05  # the first and last tick lie at least so far beyond what is drawn


def _down(rpm: float) -> str:
    """Two figures, never above the limit."""
    step = 10.0 ** max(math.floor(math.log10(max(rpm, 1.0))) - 1, 0)
    return f"{math.floor(rpm / step + 1e-9) * step:.0f}"


def _ends(values: Sequence[float]) -> tuple[int, int]:
    """Ticks at both ends of the axis."""
    low = max((tick for tick in TICKS if tick * NEAREST_TICKS <= min(values)), default=TICKS[0])
    high = min((tick for tick in TICKS if tick >= max(values) * NEAREST_TICKS), default=TICKS[-1])
    return low, high


def limits_chart(limits: Sequence[Mapping[str, Any]], title: str, start: float | None = None) -> str:
    """SVG text of a chart of limits: rows with `name`, `rpm` and `grade`; `start` is marked by a dashed line.

    Bars and axis in rpm, logarithmic; numbers are rounded down. Raises ValueError without any limit.
    """
    return limits_picture(limits, title, start).document()


class _Axis(NamedTuple):
    """A logarithmic axis from `low` to `high` rpm over page mm."""

    low: float
    high: float
    left: float
    right: float

    def at(self, rpm: float) -> float:
        share = math.log10(max(rpm, 1e-9) / self.low) / math.log10(self.high / self.low)
        return self.left + (self.right - self.left) * min(max(share, 0.0), 1.0)

    def ticks(self) -> list[int]:
        """Ticks whose numbers do not touch."""
        kept: list[int] = []
        for tick in (tick for tick in TICKS if self.low <= tick <= self.high):
            if not kept or self.at(tick) - self.at(kept[-1]) > text_width(f"{tick}0", TEXT_HEIGHT):
                kept.append(tick)
        return kept


def limits_picture(
    limits: Sequence[Mapping[str, Any]], title: str, start: float | None = None, style: Style = ALONE
) -> Picture:
    """The chart as a picture; in a column its title is left to the page it stands on."""
    if not limits:
        raise ValueError("a chart needs one limit at least")
    rows = sorted(limits, key=lambda limit: float(limit["rpm"]))
    axis = _Axis(
        *_ends([float(limit["rpm"]) for limit in rows] + ([start] if start else [])),
        style.names,
        style.width - style.numbers,
    )
    bottom = style.top + style.row * len(rows)
    view = View("limits on the spindle speed, rpm", 1.0)
    for tick in axis.ticks():
        view.add(Line((axis.at(tick), -style.top), (axis.at(tick), -bottom), "thin"))
        view.add(Text((axis.at(tick), -bottom - 5), str(tick)))
    for place, row in enumerate(rows):
        _bar(view, row, style.top + style.row * place, axis, style, place == 0)
    if start:
        view.add(Line((axis.at(start), -style.top + 2), (axis.at(start), -bottom), "hidden"))
        view.add(Text((axis.at(start), -style.top + 3), f"start {_down(start)}"))
    notes = (
        (Text((axis.left, 10.0), title, "start", True), Text((axis.left, bottom + 11), "rpm, logarithmic", "start"))
        if style.grades
        else (Text((0.0, bottom + 5), "rpm, logarithmic", "start"),)
    )
    return Picture(title, (Placed(view, (0.0, 0.0)),), notes, style.width, bottom + style.foot)


def _bar(view: View, row: Mapping[str, Any], top: float, axis: _Axis, style: Style, governs: bool) -> None:
    upper, lower = -(top + (style.row - style.thick) / 2), -(top + (style.row + style.thick) / 2)
    reach = max(axis.at(float(row["rpm"])), axis.left + 1.0)
    corners = ((axis.left, upper), (reach, upper), (reach, lower), (axis.left, lower))
    view.add(Fill(corners, "land" if governs else "steel"))
    level = -(top + style.row / 2) - 1.1
    decides = ", decides" if governs else ""
    grade = f" ({row['grade']})" if style.grades else ""
    view.add(Text((axis.left - 2, level), str(row["name"]), "end", governs))
    view.add(Text((reach + 2, level), f"{_down(float(row['rpm']))}{decides}{grade}", "start", governs))
