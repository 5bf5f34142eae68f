"""The blank of a setup: its outline from above and from its end, waste dashed."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import cos, pi, sin, tan

from advisor.drawing.setup import Blank
from advisor.drawing.shapes import Circle, Fill, Line, Pen, Point, Shape, Tone

STEPS = 48  # corners of a drawn curve


def ring(points: Sequence[Point], pen: Pen = "edge") -> list[Shape]:
    """Lines round a polygon."""
    return [Line(a, b, pen) for a, b in zip(points, [*points[1:], points[0]], strict=True)]


def block(points: Sequence[Point], tone: Tone = "back", pen: Pen = "edge") -> list[Shape]:
    """A filled polygon with its outline."""
    return [Fill(tuple(points), tone), *ring(points, pen)]


def box(left: float, low: float, right: float, high: float) -> tuple[Point, ...]:
    """Corners of a level rectangle."""
    return ((left, low), (right, low), (right, high), (left, high))


def half_widths(blank: Blank) -> tuple[float, float]:
    """How far the outline reaches from the axis toward the turner and away, from above."""
    if blank.trued:
        return blank.diameter / 2, blank.diameter / 2
    if blank.form == "half-log" and blank.flat is not None and blank.log_radius is not None:
        return blank.flat, blank.log_radius - blank.flat
    if blank.form in ("square", "octagon"):
        return blank.end / 2, blank.end / 2
    return blank.diameter / 2, blank.diameter / 2


def outline(blank: Blank) -> tuple[Point, ...]:
    """The blank from above as a polygon."""
    half, length = blank.diameter / 2, blank.length
    if blank.form == "sphere":
        turns = [2 * pi * i / STEPS for i in range(STEPS)]
        return tuple((length / 2 * (1 - cos(a)), half * sin(a)) for a in turns)
    if blank.form == "half-log" and blank.across and not blank.trued:
        return _segment(half, length)
    near, far = half_widths(blank)
    return box(0.0, -near, length, far)


def _segment(half: float, length: float) -> tuple[Point, ...]:
    """Half a log across its grain: the sawn flat at the headstock, the bark side round."""
    radius = (half**2 + length**2) / (2 * length)
    middle = length - radius
    heights = [half * (1 - 2 * i / STEPS) for i in range(1, STEPS)]
    curve = [(max(middle + max(radius**2 - y**2, 0.0) ** 0.5, 0.0), y) for y in heights]
    return ((0.0, -half), (0.0, half), *curve)


def side(blank: Blank) -> list[Shape]:
    """The blank from above: outline, edges, the circle its corners sweep, bore and finished shape dashed."""
    shapes = block(outline(blank))
    half, length = blank.diameter / 2, blank.length
    if max(half_widths(blank)) < half * 0.999 or (blank.flat is not None and not blank.trued):
        shapes += [Line((0, y), (length, y), "cutter") for y in (-half, half)]
    if blank.form == "octagon" and not blank.trued:
        edge = blank.end / 2 * tan(pi / 8)
        shapes += [Line((0, y), (length, y), "thin") for y in (-edge, edge)]
    shapes += _hollow(blank)
    return shapes + _finished(blank)


def _hollow(blank: Blank) -> list[Shape]:
    """Bore of a tube or ring; the inside of a hollow piece by its wall and floor."""
    if blank.wall is None:
        return []
    outside = blank.diameter if blank.form in ("tube", "ring") else blank.finished or blank.diameter
    inside = outside / 2 - blank.wall
    if inside <= 0:
        return []
    if blank.form in ("tube", "ring"):
        return [Line((0, y), (blank.length, y), "hidden") for y in (-inside, inside)]
    floor = min(blank.floor or blank.wall, blank.length)
    return ring(box(floor, -inside, blank.length, inside), "hidden")


def _finished(blank: Blank) -> list[Shape]:
    """The finished shape: its profile, or its largest diameter."""
    points = list(blank.profile)
    if not points and blank.finished is not None and blank.finished < blank.diameter * 0.999:
        points = [(0.0, blank.finished), (blank.length, blank.finished)]
    lines: list[Shape] = []
    for (x1, d1), (x2, d2) in pairwise(points):
        lines += [Line((x1, s * d1 / 2), (x2, s * d2 / 2), "hidden") for s in (1, -1)]
    return lines


def end(blank: Blank) -> list[Shape]:
    """The end face and the circle it sweeps."""
    half = blank.diameter / 2
    circle = [(half * cos(2 * pi * i / STEPS), half * sin(2 * pi * i / STEPS)) for i in range(STEPS)]
    if (
        blank.trued
        or blank.form not in ("square", "octagon", "half-log")
        or (blank.form == "half-log" and blank.across)
    ):
        shapes: list[Shape] = [Fill(tuple(circle), "back"), Circle((0, 0), half)]
    else:
        shapes = [*block(_end_points(blank)), Circle((0, 0), half, "cutter")]
    if blank.form in ("tube", "ring") and blank.wall is not None and half > blank.wall:
        shapes.append(Circle((0, 0), half - blank.wall))
    return shapes


def _end_points(blank: Blank) -> list[Point]:
    if blank.form == "half-log" and blank.flat is not None and blank.log_radius is not None:
        low, radius = -blank.flat, blank.log_radius
        return [(radius * cos(pi * i / STEPS), low + radius * sin(pi * i / STEPS)) for i in range(STEPS + 1)]
    corners, turn = (4, pi / 4) if blank.form == "square" else (8, pi / 8)
    reach = blank.end / 2 / cos(pi / corners)
    return [
        (reach * cos(2 * pi * i / corners + turn), reach * sin(2 * pi * i / corners + turn)) for i in range(corners)
    ]
