"""Pages -> one tagged PDF. What is said goes to the typesetter as data beside a template that never changes."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import date
from functools import cache
from importlib.resources import files
from typing import Any

from advisor.drawing.svg import Picture
from advisor.report.sheet.as_svg import PAGES
from advisor.report.sheet.clean import breakable
from advisor.report.sheet.flow import Laid
from advisor.report.sheet.page import Section

OWN = ("Libertinus Serif", "DejaVu Sans Mono")  # the typesetter carries these itself
OWN_SIGNS = 0x2E80  # from here on: ideographs, pictures and more, in no font of its own
OWN_GAPS = (0x0590, 0x1E00)  # scripts between Cyrillic and the Latin additions


@cache
def _template() -> bytes:
    return files("advisor.report.sheet").joinpath("sheet.typ").read_bytes()


def sheet_pdf(pages: Sequence[Laid], made: date) -> bytes:
    """The file as bytes; `made` is the day it says it was made on."""
    import typst

    data = json.dumps(
        {
            "title": "; ".join(laid.page.name for laid in pages),
            "made": [made.year, made.month, made.day],
            "paper": PAGES[pages[0].page.units],
            "fonts": OWN,
            "pages": [_page(laid) for laid in pages],
        },
        ensure_ascii=False,
    )
    options: dict[str, Any] = {
        "format": "pdf",
        "sys_inputs": {"data": data},
        "ignore_system_fonts": not _foreign(data),
    }
    try:
        file = typst.compile(_template(), pdf_standards=["ua-1"], **options)
    except typst.TypstError as fault:
        if "could not be displayed" not in str(fault):
            raise
        # a sign that no font here has: an empty box in its place, and no promise that everything can be read aloud
        file = typst.compile(_template(), **options)
    assert isinstance(file, bytes)
    return file


def _foreign(text: str) -> bool:
    """Whether a sign needs a font of the machine; without one the sheet is the same on every machine."""
    low, high = OWN_GAPS
    return any(low <= ord(sign) < high or ord(sign) >= OWN_SIGNS for sign in text)


def _page(laid: Laid) -> dict[str, Any]:
    page = laid.page
    return {
        **{key: breakable(getattr(page, key)) for key in ("name", "made", "headline", "reason", "remedy", "foot")},
        "verdict": page.verdict,
        "body": laid.body,
        "head": laid.head,
        "reason_points": page.reason_points,
        "speeds": [big._asdict() for big in page.speeds],
        "hold": [big._asdict() for big in page.hold],
        "facts": [[name, breakable(text)] for name, text in page.facts],
        "drawing": _picture(laid.drawing) if laid.drawing is not None else None,
        "columns": [[_section(section) for section in column] for column in laid.columns],
        "fine": [_section(section) for section in laid.fine],
    }


def _picture(picture: Picture) -> dict[str, Any]:
    return {"svg": picture.document(), "alt": picture.title}


def _section(section: Section) -> dict[str, Any]:
    rows = section.rows
    return {
        "title": section.title,
        "items": [breakable(text) for text in section.shown],
        "boxes": section.boxes,
        "picture": _picture(section.picture) if section.picture is not None else None,
        "rows": None
        if rows is None
        else {
            "heads": rows.heads,
            "shares": rows.shares,
            "cells": [[breakable(cell) for cell in row] for row in rows.cells],
        },
    }
