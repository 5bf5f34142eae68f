"""DXF writer, release 12 (AC1009): lines, circles, arcs, text, at full size in millimeters, a layer for each pen."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from advisor.drawing.shapes import TEXT_HEIGHT, Arc, Circle, Fill, Line, Point, Shape, Text, View

LAYERS = {
    "edge": ("EDGE", 7, "CONTINUOUS"),
    "thin": ("DIM", 3, "CONTINUOUS"),
    "hidden": ("HIDDEN", 2, "DASHED"),
    "center": ("CENTER", 1, "CENTER"),
    "cutter": ("CUTTER", 5, "DASHED"),
    "text": ("TEXT", 7, "CONTINUOUS"),
}
LINE_TYPES = {
    "CONTINUOUS": ("Solid line", ()),
    "DASHED": ("__ __ __", (3.0, -1.5)),
    "CENTER": ("____ _ ____", (9.0, -1.5, 1.5, -1.5)),
}
JUSTIFY = {"start": 0, "middle": 1, "end": 2}
PLAIN = {"°": "%%d", "±": "%%p", "⌀": "%%c", "·": "*", "²": "2", "³": "3", "×": "x"}


class Laid(NamedTuple):
    """A view in the drawing: where its model origin comes to lie (mm)."""

    view: View
    origin: Point


def write_dxf(laid: Sequence[Laid]) -> str:
    """The whole drawing as DXF text. Filled areas are left out; dimensions are drawn as lines and text."""
    pairs: list[tuple[int, object]] = [(0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"), (0, "ENDSEC")]
    pairs += [(0, "SECTION"), (2, "TABLES"), *_line_types(), *_layers(), (0, "ENDSEC")]
    pairs += [(0, "SECTION"), (2, "ENTITIES")]
    for item in laid:
        height = TEXT_HEIGHT / item.view.scale
        for shape in item.view.plain():
            pairs += _entity(shape, item.origin, height)
    pairs += [(0, "ENDSEC"), (0, "EOF")]
    return "".join(f"{code:>3}\n{value}\n" for code, value in pairs)


def _line_types() -> list[tuple[int, object]]:
    pairs: list[tuple[int, object]] = [(0, "TABLE"), (2, "LTYPE"), (70, len(LINE_TYPES))]
    for name, (text, dashes) in LINE_TYPES.items():
        pairs += [(0, "LTYPE"), (2, name), (70, 0), (3, text), (72, 65), (73, len(dashes))]
        pairs += [(40, float(sum(abs(dash) for dash in dashes))), *[(49, dash) for dash in dashes]]
    return [*pairs, (0, "ENDTAB")]


def _layers() -> list[tuple[int, object]]:
    pairs: list[tuple[int, object]] = [(0, "TABLE"), (2, "LAYER"), (70, len(LAYERS))]
    for name, color, line_type in LAYERS.values():
        pairs += [(0, "LAYER"), (2, name), (70, 0), (62, color), (6, line_type)]
    return [*pairs, (0, "ENDTAB")]


def _entity(shape: Shape, origin: Point, height: float) -> list[tuple[int, object]]:
    def point(at: Point, shift: int = 0) -> list[tuple[int, object]]:
        x, y = origin[0] + at[0], origin[1] + at[1]
        return [(10 + shift, f"{x:.9f}"), (20 + shift, f"{y:.9f}"), (30 + shift, "0.0")]

    if isinstance(shape, Fill):
        return []
    if isinstance(shape, Line):
        return [(0, "LINE"), (8, LAYERS[shape.pen][0]), *point(shape.start), *point(shape.end, 1)]
    if isinstance(shape, Circle):
        return [(0, "CIRCLE"), (8, LAYERS[shape.pen][0]), *point(shape.center), (40, f"{shape.radius:.9f}")]
    if isinstance(shape, Arc):
        sweep = [(40, f"{shape.radius:.9f}"), (50, f"{shape.start:.9f}"), (51, f"{shape.end:.9f}")]
        return [(0, "ARC"), (8, LAYERS[shape.pen][0]), *point(shape.center), *sweep]
    if isinstance(shape, Text):
        body = [(40, f"{height:.6f}"), (1, _plain(shape.text)), (72, JUSTIFY[shape.anchor])]
        return [(0, "TEXT"), (8, LAYERS["text"][0]), *point(shape.at), *body, *point(shape.at, 1)]
    raise TypeError(f"{type(shape).__name__} is taken apart before it is written")


def _plain(text: str) -> str:
    """Release 12 knows only plain letters; signs have codes or a plain stand-in."""
    for sign, code in PLAIN.items():
        text = text.replace(sign, code)
    return text.encode("ascii", "replace").decode().replace("\n", " ")
