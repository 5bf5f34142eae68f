"""The sheet of a toothed center: three views and the numbers, as SVG page or DXF drawing."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from advisor.centers.answer import Answer
from advisor.centers.wording import angle, length, place
from advisor.drawing.center_end_view import end_view
from advisor.drawing.center_section_views import section_radius, side_view, tooth_view
from advisor.drawing.dxf import Laid, write_dxf
from advisor.drawing.shapes import TEXT_HEIGHT, Point, Text, View
from advisor.drawing.svg import Placed, write_svg
from advisor.physics.center import land, root_thickness, thickness, tip_angle, tip_drop
from advisor.physics.center_setting import bore_for_two_settings

PAGE = (297.0, 210.0)
SCALES = (20.0, 15.0, 10.0, 8.0, 6.0, 5.0, 4.0, 3.0, 2.5, 2.0, 1.5, 1.25, 1.0, 0.8, 0.6, 0.5, 0.4, 0.3, 0.25, 0.2, 0.1)
BOXES = {"end": (8.0, 24.0, 132.0, 104.0), "side": (146.0, 24.0, 143.0, 104.0), "tooth": (8.0, 136.0, 140.0, 66.0)}
TABLE_AT = (156.0, 140.0)
LINE = 5.0

Builder = Callable[[float], View]


def fitted(build: Builder, width: float, height: float) -> View:
    """The view at the largest scale of the list at which all of it, lettering included, fits."""
    for scale in SCALES:
        view = build(scale)
        left, low, right, high = view.box()
        if (right - left) * scale <= width and (high - low) * scale <= height:
            return view
    return view


def views(answer: Answer) -> dict[str, View]:
    """The three views, each at its own scale."""
    center, mirror, sizes = answer.center, answer.wanted.reverse, lettering(answer)
    builders: dict[str, Builder] = {
        "end": lambda scale: end_view(center, mirror, scale, sizes),
        "side": lambda scale: side_view(center, mirror, scale, sizes),
        "tooth": lambda scale: tooth_view(center, scale, sizes),
    }
    return {name: fitted(build, BOXES[name][2], BOXES[name][3]) for name, build in builders.items()}


def lettering(answer: Answer) -> dict[str, str]:
    """What stands beside each size, in the system asked for."""
    center, system = answer.center, answer.system
    root = root_thickness(center)
    radius = section_radius(center)
    width, drop = land(center, radius), tip_drop(center, radius)
    return {
        "diameter": f"⌀ {length(center.diameter, system)}",
        "hole": f"hole ⌀ {length(center.hole, system)}",
        "bore": f"bore ⌀ {length(bore_for_two_settings(center), system)}",
        "land": f"land {length(width, system)}" if width > 0 else "no land",
        "depth": length(center.depth, system),
        "y": f"Y {length(answer.side * center.driving.y, system)}",
        "x": f"X {length(center.x, system)}",
        "cutter": f"cutter ⌀ {length(center.cutter, system)}",
        "height": length(center.depth - drop, system),
        "root": "square back" if root is None else length(root, system),
        "back": f"back R {length(center.cutter_radius, system)}",
        "tip": f"tip {angle(tip_angle(center, radius))}",
        "half": f"{length(thickness(center, radius, center.depth / 2), system)} at half depth",
        "loss": f"turned face; tip lowered {length(drop, system)}",
    }


def table(answer: Answer) -> list[str]:
    """The numbers that go with the views."""
    center, system = answer.center, answer.system
    rows = [f"{center.teeth} teeth, {answer.wanted.rotation} rotation"]
    for name, setting in zip("AB", center.settings, strict=False):
        which = f"Setting {name}: " if len(center.settings) == 2 else ""
        y, z = place(answer.side * setting.y, system), place(setting.z - center.outer_radius, system)
        turn = f", pocket turned {answer.side * setting.turn:+.3f} deg" if setting.turn else ""
        rows.append(f"{which}X {place(-center.depth, system)}  Y {y}  Z {z}{turn}")
    unit = "in" if system.value == "inch" else "mm"
    return [
        *rows,
        f"({unit}; X 0 at the face, Y 0 on the axis, Z 0 at the top)",
        f"Index {360 / center.teeth:g} deg, {center.teeth} times, same X, Y, Z",
        f"Land {_inner_land(answer)},"
        f" at the rim {length(land(center, center.outer_radius), system)}",
        f"Tooth height {length(center.depth - answer.tip_loss, system)}, tip {angle(answer.tip_angle)}",
        f"Cutter end {_height(answer)}, corner radius {length(center.corner_radius, system)}",
        "Depth first; rough all teeth; last light cut in Y; lock.",
        "Break the outer corners with a stone. Eye protection.",
    ]


def _inner_land(answer: Answer) -> str:
    """The land at the inner end of the teeth: at the hole, or at the bore where the face is bored out."""
    center, bore = answer.center, bore_for_two_settings(answer.center)
    inner, name = (bore, "bore") if center.hole < bore < center.diameter else (center.hole, "hole")
    return f"at the {name} {length(land(center, inner / 2 * (1 + 1e-6)), answer.system)}"


def _height(answer: Answer) -> str:
    z = answer.center.driving.z
    if z == 0:
        return "on center"
    return f"{length(abs(z), answer.system)} {'below' if z < 0 else 'above'} center"


def write_drawing(answer: Answer, path: Path) -> None:
    """Write the sheet as SVG or DXF, by the ending of the name."""
    text = dxf(answer) if path.suffix.lower() == ".dxf" else svg(answer)
    path.write_text(text, encoding="utf-8")


def svg(answer: Answer) -> str:
    """The page, A4 on its side."""
    title = f"Toothed drive center, {length(answer.center.diameter, answer.system)}"
    placed, notes = [], [Text((8, 11), title, "start", bold=True)]
    for name, view in views(answer).items():
        left, top, width, height = BOXES[name]
        low_x, low_y, high_x, high_y = view.box()
        middle = ((low_x + high_x) / 2 * view.scale, (low_y + high_y) / 2 * view.scale)
        placed.append(Placed(view, (left + width / 2 - middle[0], top + height / 2 + middle[1])))
        notes.append(Text((left, top - 3), f"{view.title} ({view.scale:g}:1)", "start", bold=True))
    x, y = TABLE_AT
    notes += [Text((x, y + LINE * i), row, "start") for i, row in enumerate(table(answer))]
    return write_svg(title, placed, notes, *PAGE)


def dxf(answer: Answer) -> str:
    """The drawing at full size in millimeters: the views in a row, the end view's axis at the origin."""
    laid: list[Laid] = []
    right = 0.0
    for name, view in views(answer).items():
        left_edge, _, right_edge, high = view.box()
        gap = view.page(12)
        origin: Point = (0.0, 0.0) if name == "end" else (right + gap - left_edge, 0.0)
        view.add(Text((left_edge, high + view.page(2 * TEXT_HEIGHT)), view.title, "start"))
        laid.append(Laid(view, origin))
        right = origin[0] + right_edge
    words = View("Numbers", laid[0].view.scale)
    rows = ["Full size, all lengths of the drawing in mm", *table(answer)]
    words.add(*[Text((0.0, -words.page(LINE * i)), row, "start") for i, row in enumerate(rows)])
    laid.append(Laid(words, (right + words.page(12), 0.0)))
    return write_dxf(laid)
