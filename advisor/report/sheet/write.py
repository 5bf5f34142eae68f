"""Pages -> a file, of the kind its ending says, whole or not at all."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime, timezone

from advisor.report.output import OutputFault, ending_of, write_whole
from advisor.report.sheet.flow import lay_out
from advisor.report.sheet.page import Page

ENDINGS = (".html", ".pdf", ".svg")
LATEST = 253402300799  # the last second of the year 9999


def day_of_making(environment: Mapping[str, str], today: date) -> date:
    """The day of making, or that of SOURCE_DATE_EPOCH so that the same sheet comes out twice."""
    fixed = environment.get("SOURCE_DATE_EPOCH")
    if not fixed:
        return today
    if not (fixed.isascii() and fixed.isdigit()) or int(fixed[:20]) > LATEST:
        raise OutputFault(f"SOURCE_DATE_EPOCH is {fixed[:40]!r}; whole seconds since 1970 are accepted")
    return datetime.fromtimestamp(int(fixed), tz=timezone.utc).date()


def sheet_ending(path: str | None) -> str:
    """The ending of a sheet's file. Raises OutputFault for any that is not written."""
    return ending_of(path, ENDINGS, "sheet")


def write_sheet(pages: Sequence[Page], path: str, made: date) -> None:
    """Write the pages. Raises OutputFault where that cannot be done; then nothing is changed."""
    write_whole(path, content_of(sheet_ending(path), pages, made))


def content_of(ending: str, pages: Sequence[Page], made: date) -> str | bytes:
    """The whole file of that ending."""
    laid = [lay_out(page) for page in pages]
    if ending == ".pdf":
        from advisor.report.sheet.as_pdf import sheet_pdf

        return sheet_pdf(laid, made)
    if ending == ".svg":
        from advisor.report.sheet.as_svg import sheet_svg

        return sheet_svg(laid)
    from advisor.report.sheet.as_html import sheet_html

    return sheet_html(laid)
