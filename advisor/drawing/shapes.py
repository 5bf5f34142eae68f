"""What a drawing is made of, in model millimeters with Y up; the writers turn it into SVG or DXF.

Text and dimension lines are measured on the page, so a view carries the scale at which it will be shown.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import cos, hypot, radians, sin
from typing import Literal, NamedTuple

Point = tuple[float, float]
Pen = Literal["edge", "thin", "hidden", "center", "cutter"]
Tone = Literal["steel", "back", "land", "paper"]
Anchor = Literal["start", "middle", "end"]

TEXT_HEIGHT = 3.2
"""Height of lettering on the page, mm."""


class Line(NamedTuple):
    start: Point
    end: Point
    pen: Pen = "edge"


class Circle(NamedTuple):
    center: Point
    radius: float
    pen: Pen = "edge"


class Arc(NamedTuple):
    """Counter-clockwise from one angle to another, degrees."""

    center: Point
    radius: float
    start: float
    end: float
    pen: Pen = "edge"

    def points(self, steps: int = 48) -> list[Point]:
        """Points along the arc, ends included."""
        span = (self.end - self.start) / steps
        x, y = self.center
        angles = [radians(self.start + span * i) for i in range(steps + 1)]
        return [(x + self.radius * cos(a), y + self.radius * sin(a)) for a in angles]


class Fill(NamedTuple):
    """A filled area without an outline. DXF leaves it out: R12 has no solid fill worth having."""

    points: tuple[Point, ...]
    tone: Tone


class Text(NamedTuple):
    at: Point
    text: str
    anchor: Anchor = "middle"
    bold: bool = False


class Dimension(NamedTuple):
    """A measured distance: extension lines from both points to a line `offset` page mm away (left of start-to-end)."""

    start: Point
    end: Point
    offset: float
    text: str


class Leader(NamedTuple):
    """A note with an arrow that points at something."""

    tip: Point
    elbow: Point
    text: str
    anchor: Anchor = "start"


Shape = Line | Circle | Arc | Fill | Text | Dimension | Leader


@dataclass
class View:
    """One view: its title, the scale at which it is shown (page mm for one model mm), and its shapes in order."""

    title: str
    scale: float
    shapes: list[Shape] = field(default_factory=list)

    def add(self, *shapes: Shape) -> None:
        self.shapes.extend(shapes)

    def page(self, mm: float) -> float:
        """Model length of a length on the page."""
        return mm / self.scale

    def plain(self) -> list[Shape]:
        """The shapes with dimensions and leaders taken apart into lines and text."""
        parts: list[Shape] = []
        for shape in self.shapes:
            if isinstance(shape, Dimension):
                parts += dimension_parts(shape, self.scale)
            elif isinstance(shape, Leader):
                parts += leader_parts(shape, self.scale)
            else:
                parts.append(shape)
        return parts

    def box(self) -> tuple[float, float, float, float]:
        """Least x and y, greatest x and y of everything drawn, lettering included (model mm)."""
        points = [p for shape in self.plain() for p in _corners(shape, self.page(TEXT_HEIGHT))]
        xs, ys = [p[0] for p in points], [p[1] for p in points]
        return min(xs), min(ys), max(xs), max(ys)


def text_width(text: str, height: float) -> float:
    """Width of lettering, reckoned on the wide side: 0.62 of its height for each letter."""
    return 0.62 * height * len(text)


def _corners(shape: Shape, height: float) -> Sequence[Point]:
    if isinstance(shape, Line):
        return (shape.start, shape.end)
    if isinstance(shape, Circle):
        (x, y), r = shape.center, shape.radius
        return ((x - r, y - r), (x + r, y + r))
    if isinstance(shape, Arc):
        return shape.points()
    if isinstance(shape, Fill):
        return shape.points
    if isinstance(shape, Text):
        width = text_width(shape.text, height)
        left = {"start": 0.0, "middle": width / 2, "end": width}[shape.anchor]
        x, y = shape.at
        return ((x - left, y - height / 3), (x - left + width, y + height))
    raise TypeError(f"{type(shape).__name__} is taken apart before it is measured")


def arrow(tip: Point, toward: Point, size: float) -> list[Shape]:
    """An open arrowhead at `tip` that comes from `toward`."""
    dx, dy = toward[0] - tip[0], toward[1] - tip[1]
    reach = hypot(dx, dy) or 1.0
    ux, uy = dx / reach * size, dy / reach * size
    barbs = [(tip[0] + ux - s * uy * 0.3, tip[1] + uy + s * ux * 0.3) for s in (1, -1)]
    return [Line(tip, barb, "thin") for barb in barbs]


def dimension_parts(dim: Dimension, scale: float) -> list[Shape]:
    """Extension lines, dimension line with arrows, lettering. Where the room is short the arrows come from outside."""
    (x1, y1), (x2, y2) = dim.start, dim.end
    reach = hypot(x2 - x1, y2 - y1)
    if reach == 0:
        return [Text(dim.start, dim.text)]
    ux, uy = (x2 - x1) / reach, (y2 - y1) / reach
    nx, ny = -uy, ux
    off, gap, size = dim.offset / scale, 1.2 / scale, 2.4 / scale
    sign = 1 if off >= 0 else -1
    a, b = (x1 + nx * off, y1 + ny * off), (x2 + nx * off, y2 + ny * off)
    past = sign * gap
    parts: list[Shape] = [
        Line((x + nx * past, y + ny * past), (e[0] + nx * past, e[1] + ny * past), "thin")
        for (x, y), e in ((dim.start, a), (dim.end, b))
    ]
    height = TEXT_HEIGHT / scale
    roomy = reach > text_width(dim.text, height) + 2 * size if abs(ux) > 0.5 else reach > 3 * size
    if roomy:
        parts += [Line(a, b, "thin"), *arrow(a, b, size), *arrow(b, a, size)]
    else:
        out = 3 * size
        c, d = (a[0] - ux * out, a[1] - uy * out), (b[0] + ux * out, b[1] + uy * out)
        parts += [Line(c, a, "thin"), Line(b, d, "thin"), *arrow(a, c, size), *arrow(b, d, size)]
    return [*parts, _dimension_text(dim, a, b, (ux, uy), scale, roomy)]


def _dimension_text(dim: Dimension, a: Point, b: Point, along: Point, scale: float, roomy: bool) -> Text:
    """Lettering stays level: above a level line, beside an upright one; past the end where there is no room."""
    gap = 1.0 / scale
    height = TEXT_HEIGHT / scale
    mx, my = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
    if abs(along[0]) > 0.5:
        if roomy:
            return Text((mx, my + gap), dim.text)
        end = max(a, b)
        return Text((end[0] + 7.6 / scale, end[1] - height / 3), dim.text, "start")
    right = dim.start[0] <= a[0]
    return Text((mx + (gap if right else -gap), my - height / 3), dim.text, "start" if right else "end")


def leader_parts(leader: Leader, scale: float) -> list[Shape]:
    """The line, its arrow, and the note beyond the elbow."""
    gap = 1.0 / scale
    side = {"start": gap, "middle": 0.0, "end": -gap}[leader.anchor]
    x, y = leader.elbow
    drop = TEXT_HEIGHT / 3 / scale if leader.anchor != "middle" else -gap
    return [
        Line(leader.tip, leader.elbow, "thin"),
        *arrow(leader.tip, leader.elbow, 2.4 / scale),
        Text((x + side, y - drop), leader.text, leader.anchor),
    ]
