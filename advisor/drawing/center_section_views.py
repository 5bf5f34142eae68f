"""Two sections of a toothed center: along the axis at the floor of a pocket, and through one tooth."""

from __future__ import annotations

from itertools import pairwise
from math import atan2, cos, degrees, pi, sin, sqrt

from advisor.drawing.shapes import Arc, Circle, Dimension, Fill, Leader, Line, Point, Text, View
from advisor.physics.center import ToothedCenter, thickness, tip_drop, wall_at

STEPS = 40


def side_view(center: ToothedCenter, mirror: bool, scale: float, sizes: dict[str, str]) -> View:
    """The blank from above, cut at the floor of a pocket, with the cutter in its last place (setting A).

    `sizes` holds the lettering of depth, y, x and cutter.
    """
    view = View("Side view from above, cut at the floor of a pocket", scale)
    side = -1 if mirror else 1
    radius, depth = center.outer_radius, center.depth
    body = max(2.2 * depth, 0.9 * radius)

    def at(x: float, y: float) -> Point:
        return (x, side * y)

    view.add(Fill((at(-body, -radius), at(0, -radius), at(0, radius), at(-body, radius)), "steel"))
    wall = [(-depth * i / STEPS, wall_at(center, center.driving, depth * i / STEPS)) for i in range(STEPS + 1)]
    pocket = [(x, min(max(y, -radius), radius)) for x, y in wall] + [(-depth, radius), (0.0, radius)]
    view.add(Fill(tuple(at(x, y) for x, y in pocket), "paper"))
    _blank_lines(view, center, side, body)
    y = center.driving.y
    view.add(Circle(at(center.x, y), center.cutter_radius, "cutter"))
    mark = view.page(2)
    view.add(Line(at(center.x - mark, y), at(center.x + mark, y), "thin"))
    view.add(Line(at(center.x, y - mark), at(center.x, y + mark), "thin"))
    view.add(Line((-body - view.page(3), 0), (center.x + center.cutter_radius + view.page(4), 0), "center"))
    _side_sizes(view, center, side, sizes)
    return view


def _blank_lines(view: View, center: ToothedCenter, side: int, body: float) -> None:
    radius, hole, depth = center.outer_radius, center.hole_radius, center.depth

    def line(x1: float, y1: float, x2: float, y2: float, hidden: bool = False) -> Line:
        return Line((x1, side * y1), (x2, side * y2), "hidden" if hidden else "edge")

    top = min(max(wall_at(center, center.driving, 0.0), -radius), radius)
    view.add(line(-body, -radius, 0, -radius), line(0, -radius, 0, top), line(-body, -radius, -body, radius))
    view.add(line(-body, radius, -depth, radius))
    root = min(center.driving.y, radius)
    if root < radius:
        view.add(line(-depth, root, -depth, radius))
    view.add(_wall_arc(center, side))
    for y in (-hole, hole):
        view.add(line(-body, y, 0, y, hidden=True))


def _wall_arc(center: ToothedCenter, side: int) -> Arc:
    """The wall as the cutter leaves it, from the face to the root or to the rim."""
    a, x, y = center.cutter_radius, center.x, center.driving.y
    out = min(center.outer_radius - y, 0.0)
    root = degrees(atan2(out, -sqrt(a * a - out * out))) % 360
    face = degrees(atan2(-sqrt(a * a - x * x), -x)) % 360
    if side > 0:
        return Arc((x, y), a, root, face)
    return Arc((x, -y), a, 360 - face, 360 - root)


def _side_sizes(view: View, center: ToothedCenter, side: int, sizes: dict[str, str]) -> None:
    a, y = center.cutter_radius, center.driving.y
    top = max(center.outer_radius, y + a)
    right = center.x + a
    high = (top - center.outer_radius) * view.scale + 7
    corner = side * center.outer_radius
    view.add(Dimension((-center.depth, corner), (0, corner), side * high, sizes["depth"]))
    ends = ((right, 0.0), (right, side * y)) if side > 0 else ((right, side * y), (right, 0.0))
    view.add(Dimension(*ends, -8, sizes["y"]))
    view.add(Line((center.x, side * y), (right + view.page(10), side * y), "thin"))
    if center.x > 0:
        other = -corner
        view.add(Dimension((0, other), (center.x, other), -side * 7, sizes["x"]))
        view.add(Line((center.x, side * y), (center.x, other), "thin"))
    angle = side * pi / 4
    rim = (center.x + a * cos(angle), side * y + a * sin(angle))
    view.add(Leader(rim, (rim[0] + view.page(6), rim[1] + side * view.page(6)), sizes["cutter"], "start"))


def is_jaw(center: ToothedCenter) -> bool:
    """Two teeth of one setting: the back is square to the driving face, so no section square to it shows a tooth."""
    return center.teeth == 2 and len(center.settings) == 1


def section_radius(center: ToothedCenter) -> float:
    """Radius at which the tooth is shown: the rim, or mid radius for a jaw."""
    return center.mid_radius if is_jaw(center) else center.outer_radius


def back_points(center: ToothedCenter) -> list[Point]:
    """Outline of a tooth's back, (thickness, -depth) from the tip down, square to the driving face at the rim.

    Two teeth of one setting have no such section; theirs is unrolled along the arc at mid radius.
    """
    radius = section_radius(center)
    start = tip_drop(center, radius)
    depths = [start + (center.depth - start) * i / STEPS for i in range(STEPS + 1)]
    if is_jaw(center):
        return [(thickness(center, radius, u), -u) for u in depths]
    driving, backing = center.driving, center.backing
    if center.parallel:
        shift = driving.z
        return [(max(wall_at(center, backing, u) + shift, 0.0), -u) for u in depths]
    rim = sqrt(radius * radius - driving.z**2)
    cosine, sine = cos(center.pitch), sin(center.pitch)
    return [(max((wall_at(center, driving, u) - rim * cosine) / sine + driving.z, 0.0), -u) for u in depths]


def tooth_view(center: ToothedCenter, scale: float, sizes: dict[str, str]) -> View:
    """One tooth, cut square to its driving face. `sizes`: land, height, root, back, tip, half, loss."""
    view = View(
        "One tooth, unrolled at mid radius" if is_jaw(center) else "One tooth, cut square to its driving face", scale
    )
    back = back_points(center)
    depth, rho = center.depth, center.corner_radius
    root, foot = back[-1][0], 0.45 * center.depth
    fillet = Arc((-rho, -depth + rho), rho, 270, 360)
    inner = [*fillet.points(12)] if rho > 0 else [(0.0, -depth)]
    outline = [(-foot, -depth), *inner, (0.0, back[0][1]), *back, (root + foot, -depth)]
    ground = [(root + foot, -depth - foot / 2), (-foot, -depth - foot / 2)]
    view.add(Fill((*outline, *ground), "steel"))
    view.add(Line((-foot, -depth), (-rho, -depth)), Line((0, -depth + rho), (0, back[0][1])))
    if rho > 0:
        view.add(fillet)
    if back[0][0] > 1e-9:
        view.add(Line((0, back[0][1]), back[0]))
    view.add(*_back_lines(center, back), Line(back[-1], (root + foot, -depth)))
    _tooth_sizes(view, center, back, sizes)
    return view


def _back_lines(center: ToothedCenter, back: list[Point]) -> list[Arc | Line]:
    """The back as one arc of the cutter where it is parallel to the face, as short lines where it runs askew."""
    if not center.parallel:
        return [Line(a, b) for a, b in pairwise(back)]
    middle = (center.backing.y + center.driving.z, center.x)
    tip = degrees(atan2(back[0][1] - middle[1], back[0][0] - middle[0])) % 360
    return [Arc(middle, center.cutter_radius, tip, 270)]


def _tooth_sizes(view: View, center: ToothedCenter, back: list[Point], sizes: dict[str, str]) -> None:
    depth, page, root = center.depth, view.page, back[-1][0]
    tip = back[0]
    if tip[0] > 1e-9:
        view.add(Dimension((0, tip[1]), tip, 6, sizes["land"]))
    else:
        view.add(Text((0, tip[1] + page(3)), sizes["land"]))
    foot = 0.45 * depth
    view.add(Dimension((-foot, -depth), (-foot, tip[1]), 7, sizes["height"]))
    view.add(Line((-foot - page(6), tip[1]), (0, tip[1]), "thin"))
    view.add(Dimension((0, -depth), (root, -depth), -(foot / 2 * view.scale + 7), sizes["root"]))
    if tip[1] < 0:
        view.add(Line((-foot - page(6), 0), (root, 0), "center"))
        view.add(Text((root, page(1.2)), sizes["loss"], "end"))
    half = min(range(len(back)), key=lambda i: abs(back[i][1] + depth / 2))
    view.add(Line((0, back[half][1]), back[half], "thin"))
    view.add(Leader(back[half], (back[half][0] + page(12), back[half][1] + page(3)), sizes["half"]))
    low = back[int(0.8 * STEPS)]
    view.add(Leader(low, (low[0] + page(14), low[1] + page(3)), sizes["back"]))
    quarter = back[int(0.12 * STEPS)]
    view.add(Leader(quarter, (quarter[0] + page(14), quarter[1] + page(1)), sizes["tip"]))
