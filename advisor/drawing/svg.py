"""SVG writer: views placed on a page in millimeters, readable in black and white."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple
from xml.sax.saxutils import escape, quoteattr

from advisor.drawing.shapes import TEXT_HEIGHT, Arc, Circle, Fill, Line, Point, Shape, Text, View

PENS = {
    "edge": "stroke='#000' stroke-width='0.5'",
    "thin": "stroke='#000' stroke-width='0.18'",
    "hidden": "stroke='#000' stroke-width='0.3' stroke-dasharray='2 1'",
    "center": "stroke='#000' stroke-width='0.18' stroke-dasharray='6 1.2 1 1.2'",
    "cutter": "stroke='#000' stroke-width='0.3' stroke-dasharray='4 1'",
}
TONES = {"steel": "#d9d9d9", "back": "#ececec", "land": "#4d4d4d", "paper": "#fff"}


class Placed(NamedTuple):
    """A view on the page: the page point (mm, from the top left) where its model origin comes to lie."""

    view: View
    origin: Point

    def at(self, point: Point) -> str:
        """A model point as page coordinates `x,y`."""
        scale = self.view.scale
        return f"{self.origin[0] + point[0] * scale:.4f},{self.origin[1] - point[1] * scale:.4f}"


class Picture(NamedTuple):
    """Views and lettering on a page of so many mm, and what they show in words; all lettering is escaped."""

    title: str
    placed: tuple[Placed, ...]
    notes: tuple[Text, ...]
    width: float
    height: float

    def element(self, at: Point | None = None, zoom: float = 1.0) -> str:
        """The `svg` element; `at` is where its top left corner comes to lie inside another one."""
        corner = f"x='{at[0]:g}' y='{at[1]:g}' " if at is not None else ""
        unit = "mm" if at is None else ""
        parts = [
            f"<svg xmlns='http://www.w3.org/2000/svg' {corner}width='{self.width * zoom:g}{unit}' "
            f"height='{self.height * zoom:g}{unit}' viewBox='0 0 {self.width:g} {self.height:g}' "
            f"role='img' aria-label={quoteattr(self.title)}>",
            f"<title>{escape(self.title)}</title>",
            f"<rect width='{self.width:g}' height='{self.height:g}' fill='#fff'/>",
            # "narrowed" is there in a sheet; by itself a drawing has room for wider lettering
            "<g fill='none' stroke-linecap='round' stroke-linejoin='round' "
            f"font-family='Helvetica, Arial, narrowed, sans-serif' font-size='{TEXT_HEIGHT}'>",
        ]
        for item in self.placed:
            parts.append(f"<g aria-label={quoteattr(item.view.title)}>")
            parts += [_shape(item, shape) for shape in item.view.plain()]
            parts.append("</g>")
        parts += [_text(f"{note.at[0]:.3f},{note.at[1]:.3f}", note) for note in self.notes]
        return "\n".join([*parts, "</g>", "</svg>"])

    def document(self) -> str:
        """A whole SVG file."""
        return f"<?xml version='1.0' encoding='UTF-8'?>\n{self.element()}\n"


def write_svg(title: str, placed: Sequence[Placed], notes: Sequence[Text], width: float, height: float) -> str:
    """The whole page as SVG text; `notes` are placed in page mm from the top left. All lettering is escaped."""
    return Picture(title, tuple(placed), tuple(notes), width, height).document()


def _shape(item: Placed, shape: Shape) -> str:
    scale = item.view.scale
    if isinstance(shape, Line):
        (x1, y1), (x2, y2) = (item.at(p).split(",") for p in (shape.start, shape.end))
        return f"<line x1='{x1}' y1='{y1}' x2='{x2}' y2='{y2}' {PENS[shape.pen]}/>"
    if isinstance(shape, Circle):
        x, y = item.at(shape.center).split(",")
        return f"<circle cx='{x}' cy='{y}' r='{shape.radius * scale:.4f}' {PENS[shape.pen]}/>"
    if isinstance(shape, Arc):
        ends = shape.points(1)
        reach = f"{shape.radius * scale:.4f}"
        large = 1 if shape.end - shape.start > 180 else 0
        return f"<path d='M{item.at(ends[0])} A{reach},{reach} 0 {large} 0 {item.at(ends[1])}' {PENS[shape.pen]}/>"
    if isinstance(shape, Fill):
        return f"<polygon points='{' '.join(item.at(p) for p in shape.points)}' fill='{TONES[shape.tone]}'/>"
    if isinstance(shape, Text):
        return _text(item.at(shape.at), shape)
    raise TypeError(f"{type(shape).__name__} is taken apart before it is written")


def _text(at: str, text: Text) -> str:
    x, y = at.split(",")
    weight = " font-weight='bold'" if text.bold else ""
    # the white rim keeps numbers legible where they cross a line
    rim = "fill='#000' stroke='#fff' stroke-width='0.9' paint-order='stroke'"
    return f"<text x='{x}' y='{y}' text-anchor='{text.anchor}' {rim}{weight}>{escape(text.text)}</text>"
