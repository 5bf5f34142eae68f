"""Pages -> one SVG file, one page below the other, every line where the layout put it."""

from __future__ import annotations

from collections.abc import Sequence
from xml.sax.saxutils import escape, quoteattr

from advisor.report.sheet.flow import (
    APART,
    FOOT,
    FRAME,
    GUTTER,
    INSET,
    PAD,
    Flow,
    Laid,
    Mark,
    section_flow,
    stacked,
    top_flows,
    verdict_flow,
)
from advisor.report.sheet.flow import text_flow as words
from advisor.report.sheet.lettering import stylesheet
from advisor.report.sheet.measure import MM_PER_POINT
from advisor.report.sheet.page import HEIGHT, WIDTH

MARGIN = 8.0
PAGES = {"metric": (210.0, 297.0), "inch": (215.9, 279.4)}  # A4, letter
FAMILY = "Arial, Helvetica, 'Liberation Sans', narrowed, sans-serif"
# Width and dashes of the frame: told apart without color; the word inside says it anyway.
FRAMES = {"go": (0.7, ""), "go-with-care": (1.6, ""), "ask-first": (1.6, "5 2.5"), "do-not-mount": (3.2, "")}
COLORS = {"go": "#12622f", "go-with-care": "#7a5200", "ask-first": "#7a5200", "do-not-mount": "#a01010"}


def sheet_svg(pages: Sequence[Laid]) -> str:
    """The file as text."""
    wide, tall = PAGES[pages[0].page.units]
    title = "; ".join(laid.page.name for laid in pages)
    parts = [
        "<?xml version='1.0' encoding='UTF-8'?>",
        f"<svg xmlns='http://www.w3.org/2000/svg' width='{wide:g}mm' height='{tall * len(pages):g}mm' "
        f"viewBox='0 0 {wide:g} {tall * len(pages):g}' font-family=\"{FAMILY}\">",
        f"<title>{escape(title)}</title>",
        f"<style>{stylesheet('lettering.css')}</style>",
        f"<rect width='{wide:g}' height='{tall * len(pages):g}' fill='#fff'/>",
    ]
    for number, laid in enumerate(pages):
        left, top = (wide - WIDTH) / 2, MARGIN + number * tall
        parts += [f"<g aria-label={quoteattr(laid.page.name)}>", *_page(laid, left, top), "</g>"]
    return "\n".join([*parts, "</svg>", ""])


def _page(laid: Laid, left: float, top: float) -> list[str]:
    page = laid.page
    name, *rest = top_flows(page, laid.head)
    out = _marks(name, left, top)
    at = top + name.height + APART
    frame = verdict_flow(page, laid.head)
    out += _frame(page.verdict, left, at, frame.height)
    out += _marks(frame, left + INSET, at + PAD)
    at += frame.height + FRAME + APART
    for flow in rest:
        out += _marks(flow, left, at)
        at += flow.height + APART
    if laid.drawing is not None:
        out.append(laid.drawing.element((left, at)))
        at += laid.drawing.height + APART
    columns = [stacked(section_flow(section, laid.body) for section in column) for column in laid.columns]
    for number, column in enumerate(columns):
        out += _marks(column, left + number * (WIDTH + GUTTER) / 2, at)
    at += max(column.height for column in columns)
    for section in laid.fine:
        flow = section_flow(section, laid.body)
        out += _marks(flow, left, at)
        at += flow.height
    foot = words(page.foot, FOOT, WIDTH)
    return out + _marks(foot, left, top + HEIGHT - foot.height)


def _frame(verdict: str, left: float, top: float, height: float) -> list[str]:
    pen, dashes = FRAMES[verdict]
    dashed = f" stroke-dasharray='{dashes}'" if dashes else ""
    return [
        f"<rect x='{left + pen / 2:g}' y='{top + pen / 2:g}' width='{WIDTH - pen:g}' height='{height + 2 * PAD:g}' "
        f"fill='none' stroke='{COLORS[verdict]}' stroke-width='{pen:g}'{dashed}/>"
    ]


def _marks(flow: Flow, left: float, top: float) -> list[str]:
    return [_mark(mark) for mark in flow.moved(left, top)]


def _mark(mark: Mark) -> str:
    if mark.picture is not None:
        return mark.picture.element((mark.x, mark.y), mark.zoom)
    if mark.box:
        corner = f"x='{mark.x:.2f}' y='{mark.y:.2f}' width='{mark.box:.2f}' height='{mark.box:.2f}'"
        return f"<rect {corner} fill='none' stroke='#000' stroke-width='0.3'/>"
    if mark.rule:
        return f"<path d='M{mark.x:.2f},{mark.y:.2f} h{mark.rule:.2f}' stroke='#000' stroke-width='0.2'/>"
    weight = " font-weight='bold'" if mark.bold else ""
    size = mark.points * MM_PER_POINT
    return f"<text x='{mark.x:.2f}' y='{mark.y:.2f}' font-size='{size:.3f}'{weight}>{escape(mark.text)}</text>"
