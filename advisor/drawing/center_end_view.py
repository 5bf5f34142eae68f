"""End view of a toothed center, seen from the tailstock: lands, backs, floors, driving edges."""

from __future__ import annotations

from collections.abc import Iterator
from math import acos, asin, cos, hypot, radians, sin, sqrt

from advisor.drawing.shapes import Circle, Dimension, Fill, Leader, Line, Point, Tone, View
from advisor.physics.center import Setting, ToothedCenter, land, tip_drop, wall_at
from advisor.physics.center_setting import bore_for_two_settings

ARC_STEP = radians(1.5)


def turned(point: Point, degrees_: float, mirror: bool) -> Point:
    """A point of a pocket's own frame in the end view: turned by the index, mirrored for reverse rotation."""
    angle = radians(degrees_)
    y, z = point
    y, z = y * cos(angle) - z * sin(angle), y * sin(angle) + z * cos(angle)
    return (-y if mirror else y, z)


def pockets(center: ToothedCenter) -> Iterator[tuple[Setting, float]]:
    """Every pocket: its setting, and how far it is turned (degrees)."""
    for setting in center.settings:
        for tooth in range(center.teeth):
            yield setting, setting.turn + tooth * 360 / center.teeth


def pocket_outline(center: ToothedCenter, setting: Setting, u: float) -> list[Point]:
    """Outline of one pocket inside the rim at a depth, in its own frame; empty where it misses the blank."""
    radius, wall, floor = center.outer_radius, wall_at(center, setting, u), setting.z
    if wall >= radius or floor >= radius or (hypot(wall, floor) >= radius and wall > 0 and floor > 0):
        return []
    wall = max(wall, -sqrt(radius**2 - floor**2))
    start = asin(floor / radius)
    end = acos(wall / radius)
    steps = max(int((end - start) / ARC_STEP), 2)
    arc = [start + (end - start) * i / steps for i in range(steps + 1)]
    return [(wall, floor), *[(radius * cos(a), radius * sin(a)) for a in arc]]


def kept(
    center: ToothedCenter, start: Point, end: Point, u: float, but: tuple[Setting, float]
) -> list[tuple[Point, Point]]:
    """The parts of a segment (end view, not mirrored) that no pocket but its own removes at a depth."""
    spans = [(0.0, 1.0)]
    for setting, turn in pockets(center):
        if (setting, turn) == but:
            continue
        a, b = turned(start, -turn, False), turned(end, -turn, False)
        low, high = _inside(a, b, wall_at(center, setting, u), setting.z)
        if high > low:
            spans = [p for s in spans for p in ((s[0], min(s[1], low)), (max(s[0], high), s[1])) if p[1] - p[0] > 1e-9]
    (x1, y1), (x2, y2) = start, end
    return [((x1 + (x2 - x1) * s, y1 + (y2 - y1) * s), (x1 + (x2 - x1) * t, y1 + (y2 - y1) * t)) for s, t in spans]


def _inside(a: Point, b: Point, wall: float, floor: float) -> tuple[float, float]:
    """Share of the segment a-b with y beyond the wall and z above the floor (an empty span where there is none)."""
    low, high = 0.0, 1.0
    for p, q in ((a[0] - wall, b[0] - wall), (a[1] - floor, b[1] - floor)):
        if abs(p) < 1e-9 and abs(q) < 1e-9:
            return 1.0, 0.0
        if p <= 0 and q <= 0:
            return 1.0, 0.0
        if p < 0:
            low = max(low, p / (p - q))
        elif q < 0:
            high = min(high, p / (p - q))
    return low, high


def edges(center: ToothedCenter) -> Iterator[tuple[Point, Point, str]]:
    """Every straight edge in the end view before mirroring: driving faces, tips' back edges, roots of the backs."""
    radius = center.outer_radius
    drops = [tip_drop(center, r) for r in (center.hole_radius, center.mid_radius, radius)]
    tips = min(max(drops) * (1 + 1e-6), center.depth)
    for setting, turn in pockets(center):
        floor_end = sqrt(radius**2 - setting.z**2)
        for u, name in ((0.0, "tip"), (center.depth, "root")):
            wall = wall_at(center, setting, u)
            if abs(wall) < radius and hypot(wall, max(setting.z, 0.0)) < radius:
                top = sqrt(radius**2 - wall**2)
                yield from _cleared(center, (wall, setting.z), (wall, top), u, (setting, turn), name)
        for u, name in ((tips, "face"), (center.depth, "root")):
            inner = max(wall_at(center, setting, u), -floor_end)
            if inner < floor_end:
                yield from _cleared(center, (inner, setting.z), (floor_end, setting.z), u, (setting, turn), name)


def _cleared(
    center: ToothedCenter, start: Point, end: Point, u: float, own: tuple[Setting, float], name: str
) -> Iterator[tuple[Point, Point, str]]:
    """One edge, without what other pockets remove and without what lies in the hole."""
    a, b = turned(start, own[1], False), turned(end, own[1], False)
    for p, q in kept(center, a, b, u, own):
        for r, s in outside_hole(p, q, center.hole_radius):
            yield r, s, name


def outside_hole(a: Point, b: Point, hole: float) -> list[tuple[Point, Point]]:
    """The parts of a segment outside a circle about the axis."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    along = -(a[0] * dx + a[1] * dy) / square
    miss = (a[0] + along * dx) ** 2 + (a[1] + along * dy) ** 2
    if miss >= hole * hole:
        return [(a, b)]
    half = sqrt((hole * hole - miss) / square)
    spans = [(0.0, min(1.0, along - half)), (max(0.0, along + half), 1.0)]
    return [((a[0] + dx * s, a[1] + dy * s), (a[0] + dx * t, a[1] + dy * t)) for s, t in spans if t - s > 1e-9]


def end_view(center: ToothedCenter, mirror: bool, scale: float, sizes: dict[str, str]) -> View:
    """The end view. `sizes` holds the lettering of diameter, hole and land."""
    view = View("End view, from the tailstock", scale)
    radius = center.outer_radius
    whole = tuple((radius * cos(i * ARC_STEP), radius * sin(i * ARC_STEP)) for i in range(240))
    view.add(Fill(whole, "land"))
    levels: tuple[tuple[float, Tone], ...] = ((0.0, "back"), (center.depth, "paper"))
    for u, tone in levels:
        for setting, turn in pockets(center):
            outline = pocket_outline(center, setting, u)
            if outline:
                view.add(Fill(tuple(turned(p, turn, mirror) for p in outline), tone))
    hole = center.hole_radius
    view.add(Fill(tuple((hole * cos(i * ARC_STEP), hole * sin(i * ARC_STEP)) for i in range(240)), "paper"))
    for a, b, name in edges(center):
        view.add(Line(turned(a, 0, mirror), turned(b, 0, mirror), "thin" if name == "root" else "edge"))
    view.add(Circle((0, 0), radius), Circle((0, 0), hole))
    bore = bore_for_two_settings(center) / 2
    if hole < bore < radius:
        view.add(Circle((0, 0), bore, "hidden"))
        _bore(view, bore, radius, mirror, sizes["bore"])
    _center_lines(view, radius)
    _sizes(view, center, mirror, sizes)
    return view


def _bore(view: View, bore: float, radius: float, mirror: bool, text: str) -> None:
    """Where the face is bored out, so that nothing stands inside the teeth."""
    side, down = -1 if mirror else 1, radians(-40)
    beyond = view.page(6) + radius
    tip = (side * bore * cos(down), bore * sin(down))
    elbow = (side * beyond * cos(down), beyond * sin(down))
    view.add(Leader(tip, elbow, text, "start" if side > 0 else "end"))


def _center_lines(view: View, radius: float) -> None:
    reach = radius + view.page(4)
    view.add(Line((-reach, 0), (reach, 0), "center"), Line((0, -reach), (0, reach), "center"))


def _sizes(view: View, center: ToothedCenter, mirror: bool, sizes: dict[str, str]) -> None:
    radius, hole, page = center.outer_radius, center.hole_radius, view.page
    side = -1 if mirror else 1
    view.add(Dimension((-radius, 0), (radius, 0), -(radius * view.scale + 9), sizes["diameter"]))
    up = radians(125)
    at_hole = (side * hole * cos(up), hole * sin(up))
    beyond = (side * (radius + page(6)) * cos(up), (radius + page(6)) * sin(up))
    view.add(Leader(at_hole, beyond, sizes["hole"], "end" if side > 0 else "start"))
    reach = 0.8 * radius
    angle = asin(center.driving.z / reach) - land(center, reach) / reach / 2
    at_land = (side * reach * cos(angle), reach * sin(angle))
    beyond = (side * (radius + page(5)), page(9))
    view.add(Leader(at_land, beyond, sizes["land"], "start" if side > 0 else "end"))
