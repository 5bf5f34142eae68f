"""Pages -> one HTML file that needs no other: styles and pictures inside, boxes to tick, one page on paper."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cache
from html import escape

from advisor.report.sheet.flow import Laid
from advisor.report.sheet.lettering import stylesheet
from advisor.report.sheet.page import Big, Page, Section


@cache
def _style() -> str:
    return stylesheet("lettering.css") + stylesheet("sheet.css")


def sheet_html(pages: Sequence[Laid]) -> str:
    """The file as text. `dir=auto` leaves a right-to-left name its own direction and nothing else's."""
    title = escape("; ".join(laid.page.name for laid in pages))
    head = (
        '<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"/>'
        '<meta name="viewport" content="width=device-width, initial-scale=1"/>'
        f"<title>{title}</title><style>\n{_style()}</style></head>"
    )
    return "\n".join([head, "<body>", *(_page(laid) for laid in pages), "</body></html>", ""])


def _text(text: str) -> str:
    return f'<span dir="auto">{escape(text)}</span>'


def _page(laid: Laid) -> str:
    page = laid.page
    columns = "".join(f"<div>{''.join(map(_section, column))}</div>" for column in laid.columns)
    return "\n".join(
        [
            f'<main class="page" style="--body:{laid.body:g};--head:{laid.head:g};--reason:{page.reason_points:g}">',
            f'<div class="top"><h1 dir="auto">{escape(page.name)}</h1><p>{escape(page.made)}</p></div>',
            _verdict(page),
            _bigs(page.speeds, "speed"),
            _bigs(page.hold, ""),
            *(
                f'<dl class="fact"><dt>{escape(name.upper())}</dt><dd>{_text(text)}</dd></dl>'
                for name, text in page.facts
            ),
            laid.drawing.element() if laid.drawing is not None else "",
            f'<div class="columns">{columns}</div>',
            *map(_section, laid.fine),
            f"<footer>{escape(page.foot)}</footer>",
            "</main>",
        ]
    )


def _verdict(page: Page) -> str:
    reason = f"<p>{_text(page.reason)}</p>" if page.reason else ""
    remedy = f'<p class="remedy">{_text(page.remedy)}</p>' if page.remedy else ""
    return f'<div class="verdict {escape(page.verdict)}"><p>{escape(page.headline)}</p>{reason}{remedy}</div>'


def _bigs(bigs: Iterable[Big], kind: str) -> str:
    found = "".join(_big(big) for big in bigs)
    return f'<div class="pair {kind}">{found}</div>' if found else ""


def _big(big: Big) -> str:
    unit = f'<span class="unit"> {escape(big.unit)}</span>' if big.unit else ""
    return (
        f'<dl class="big"><dt>{escape(big.label)}</dt><dd class="value">{escape(big.value)}{unit}</dd>'
        f'<dd class="note">{_text(big.note)}</dd></dl>'
    )


def _section(section: Section) -> str:
    kind = ' class="fine"' if section.fine else ""
    parts = [f"<section{kind}><h2>{escape(section.title)}</h2>"]
    if section.picture is not None:
        parts.append(section.picture.element())
    if section.rows is not None:
        shares = "".join(f'<col style="width:{share:.0%}"/>' for share in section.rows.shares)
        heads = "".join(f'<th scope="col">{escape(head)}</th>' for head in section.rows.heads)
        rows = "".join(f"<tr>{''.join(f'<td>{_text(cell)}</td>' for cell in row)}</tr>" for row in section.rows.cells)
        parts.append(
            f"<table><colgroup>{shares}</colgroup><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>"
        )
    if section.items:
        parts.append(f"<ul>{''.join(_item(text, section.boxes) for text in section.shown)}</ul>")
    return "".join([*parts, "</section>"])


def _item(text: str, boxed: bool) -> str:
    if boxed:
        return f'<li class="tick"><label><input type="checkbox"/> {_text(text)}</label></li>'
    return f"<li>{_text(text)}</li>"
